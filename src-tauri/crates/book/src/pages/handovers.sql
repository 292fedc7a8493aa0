-- Of kind 14, and not of kind 3, which is said so that the planner sees that the index holds all of them.
SELECT subject, writer, content, written, struck
FROM line INDEXED BY line_rare
WHERE book = ?1 AND kind = 14 AND kind <> 3
ORDER BY written, writer, number
