UPDATE line
SET day = ?3, shown = ?4, status = ?5, content = ?6, amended = amended + 1,
    level = ?7, amount = ?8, amount_unit = ?9, fuel = ?10,
    price = ?11, price_currency = ?12, total = ?13, total_currency = ?14
WHERE book = ?1 AND subject = ?2
