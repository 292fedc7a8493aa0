INSERT INTO done (book, subject, position, item, own, day, shown)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
