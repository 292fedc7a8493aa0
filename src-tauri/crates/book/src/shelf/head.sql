SELECT writer, hash, number
FROM entry AS last
WHERE book = ?1
  AND number = (SELECT max(number) FROM entry WHERE book = ?1 AND writer = last.writer)
ORDER BY writer
