SELECT subject, day, shown, status, level, amount, amount_unit, fuel, price, price_currency, total, total_currency
FROM line
WHERE book = ?1 AND status IS NOT NULL AND struck IS NULL
