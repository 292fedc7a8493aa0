INSERT INTO measured (book, subject, position, parameter, day, value)
VALUES (?1, ?2, ?3, ?4, ?5, ?6)
