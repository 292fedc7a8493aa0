-- From the few versions to their entries; without CROSS the planner may walk all entries of the book for the order.
SELECT bytes, hash
FROM (
    SELECT writer, number FROM line WHERE book = ?1 AND subject = ?2
    UNION ALL
    SELECT writer, number FROM version WHERE book = ?1 AND subject = ?2
) AS stands
CROSS JOIN entry ON entry.book = ?1 AND entry.writer = stands.writer AND entry.number = stands.number
ORDER BY entry.time, entry.writer, entry.number
