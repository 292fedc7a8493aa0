SELECT place, book, writer, number, time, subject, hash, bytes, signature
FROM entry
ORDER BY book, writer, number
