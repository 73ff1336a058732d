-- A visit is found under each plate and VIN that it was checked as. Cards of visits whose intake was written anew are from
-- before that was known: without their count they are derived once more, when the folder is opened.
UPDATE card SET settled = NULL
WHERE EXISTS (SELECT 1 FROM entry WHERE entry.visit = card.visit AND instr(entry.body, '"amended"') > 0);
