SELECT number, hash
FROM entry
WHERE book = ?1 AND writer = ?2
ORDER BY number DESC
LIMIT 1
