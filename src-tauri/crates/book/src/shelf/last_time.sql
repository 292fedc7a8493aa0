-- One look at the end of each book's fold order, not at every entry.
WITH RECURSIVE book_of(book) AS (
    SELECT min(book) FROM entry
    UNION ALL
    SELECT (SELECT min(book) FROM entry WHERE book > book_of.book) FROM book_of WHERE book IS NOT NULL
)
SELECT max((SELECT max(time) FROM entry WHERE entry.book = book_of.book))
FROM book_of
WHERE book IS NOT NULL
