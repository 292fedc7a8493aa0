INSERT INTO line (
    book, subject, kind, day, shown, status, content, written, writer, number,
    level, amount, amount_unit, fuel, price, price_currency, total, total_currency
)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11, ?12, ?13, ?14, ?15, ?16, ?17, ?18)
ON CONFLICT (book, subject) DO NOTHING
