-- What is still lost of a part before it is on a plate, and the work it takes: so that a kilogram that can be served has a cost.
ALTER TABLE part ADD COLUMN trim_pct double precision CHECK (trim_pct >= 0 AND trim_pct < 100);
ALTER TABLE part ADD COLUMN cooking_loss_pct double precision CHECK (cooking_loss_pct >= 0 AND cooking_loss_pct < 100);
ALTER TABLE part ADD COLUMN labour_min_per_kg double precision CHECK (labour_min_per_kg >= 0 AND labour_min_per_kg <= 1000);
