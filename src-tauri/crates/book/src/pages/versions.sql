SELECT bytes, hash
FROM entry
WHERE book = ?1 AND subject = ?2
ORDER BY time, writer, number
