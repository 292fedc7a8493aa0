SELECT subject, kind, day, content, written, amended, struck, writer
FROM line
WHERE book = ?1 AND subject = ?2
