SELECT subject, photo, width, height, filed, whole, document, page
FROM paper
WHERE book = ?1
  AND NOT EXISTS (SELECT 1 FROM tied WHERE tied.book = paper.book AND tied.paper = paper.subject)
ORDER BY filed DESC, subject DESC
