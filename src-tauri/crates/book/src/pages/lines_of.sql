-- Of a kind other than 3, which is said twice, so that the planner sees that the index holds all of them.
SELECT subject, kind, day, content, written, amended, struck, writer
FROM line INDEXED BY line_rare
WHERE book = ?1 AND kind = ?2 AND kind <> 3 AND struck IS NULL
ORDER BY written, writer, number
