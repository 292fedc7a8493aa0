-- The paper that was taken as this photo: by what is kept for it, which an index holds, and not by all papers.
SELECT paper.subject
FROM kept
CROSS JOIN paper ON paper.book = kept.book AND paper.subject = kept.subject
WHERE kept.hash = ?2 AND kept.book = ?1 AND coalesce(paper.whole, paper.photo) = ?2
ORDER BY paper.filed, paper.subject
LIMIT 1
