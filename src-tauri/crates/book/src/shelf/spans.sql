-- One look at the first and one at the last entry of each writer, not at every entry: times ascend along a chain.
WITH RECURSIVE writer_of(writer) AS (
    SELECT min(writer) FROM entry WHERE book = ?1
    UNION ALL
    SELECT (SELECT min(writer) FROM entry WHERE book = ?1 AND writer > writer_of.writer)
    FROM writer_of
    WHERE writer IS NOT NULL
)
SELECT first.writer, first.time, last.time, last.number
FROM writer_of
JOIN entry AS first ON first.book = ?1 AND first.writer = writer_of.writer AND first.number = 0
JOIN entry AS last ON last.book = ?1 AND last.writer = writer_of.writer
    AND last.number = (SELECT max(number) FROM entry WHERE book = ?1 AND writer = writer_of.writer)
ORDER BY first.time, first.writer
