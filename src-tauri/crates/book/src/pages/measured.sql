SELECT subject, parameter, day, value
FROM measured
WHERE book = ?1
ORDER BY day, subject, position
