INSERT INTO entry (book, writer, number, time, subject, hash, bytes, signature)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)
