SELECT subject, day, shown, status
FROM line
WHERE book = ?1 AND status IS NOT NULL AND struck IS NULL
