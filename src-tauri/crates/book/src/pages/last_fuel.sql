SELECT subject, kind, day, content, written, amended, struck
FROM line
WHERE book = ?1 AND fuel = 1 AND struck IS NULL
ORDER BY day DESC, written DESC
LIMIT 1
