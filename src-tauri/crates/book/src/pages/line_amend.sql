UPDATE line
SET day = ?3, shown = ?4, status = ?5, fuel = ?6, content = ?7, amended = amended + 1
WHERE book = ?1 AND subject = ?2
