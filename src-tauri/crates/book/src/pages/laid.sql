SELECT name
FROM sqlite_schema
WHERE type = 'table' AND name NOT IN ('entry', 'setting') AND name NOT LIKE 'sqlite\_%' ESCAPE '\'
