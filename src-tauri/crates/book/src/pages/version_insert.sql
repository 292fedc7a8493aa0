INSERT INTO version (book, subject, time, writer, number)
VALUES (?1, ?2, ?3, ?4, ?5)
