UPDATE line
SET day = ?3, shown = ?4, fuel = ?5, content = ?6, amended = amended + 1
WHERE book = ?1 AND subject = ?2
