SELECT subject, content
FROM line
WHERE book = ?1 AND fuel = 1 AND struck IS NULL
ORDER BY day, shown, subject
