INSERT INTO paper (book, subject, photo, width, height, filed, whole, document, page)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9)
