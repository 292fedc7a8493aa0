INSERT INTO paper (book, subject, photo, width, height, filed)
VALUES (?1, ?2, ?3, ?4, ?5, ?6)
