-- One look at each book, not at every entry.
WITH RECURSIVE book_of(book) AS (
    SELECT min(book) FROM entry
    UNION ALL
    SELECT (SELECT min(book) FROM entry WHERE book > book_of.book) FROM book_of WHERE book IS NOT NULL
)
SELECT book
FROM book_of
WHERE book IS NOT NULL
ORDER BY book
