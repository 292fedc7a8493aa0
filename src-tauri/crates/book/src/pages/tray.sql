SELECT subject, photo, width, height, filed
FROM paper
WHERE book = ?1
  AND NOT EXISTS (SELECT 1 FROM visit_paper WHERE visit_paper.book = paper.book AND visit_paper.paper = paper.subject)
ORDER BY filed DESC, subject DESC
