SELECT subject, kind, day, content, written, amended, struck, writer
FROM line
WHERE book = ?1 AND kind = ?2 AND struck IS NULL
ORDER BY written, writer, number
