SELECT subject, kind, day, content, written, amended, struck, writer
FROM line
WHERE book = ?1
  AND (?2 IS NULL OR day >= ?2)
  AND (?3 IS NULL OR day <= ?3)
  AND ((?4 IS NULL AND ?5 IS NULL) OR EXISTS (
      SELECT 1 FROM done
      WHERE done.book = line.book AND done.subject = line.subject AND (done.item = ?4 OR done.own = ?5)
  ))
ORDER BY day DESC, written DESC, writer DESC, number DESC
