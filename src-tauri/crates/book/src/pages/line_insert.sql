INSERT INTO line (book, subject, kind, day, shown, status, fuel, content, written, writer, number)
VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, ?9, ?10, ?11)
ON CONFLICT (book, subject) DO NOTHING
