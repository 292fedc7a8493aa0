SELECT subject, photo, width, height, filed, whole, document, page
FROM paper
WHERE book = ?1
ORDER BY filed, subject
