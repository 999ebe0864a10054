-- How a supplier is reached, where an animal was born and raised, what a batch draws and puts back, letters as they came.

ALTER TABLE supplier ADD COLUMN contact text NOT NULL DEFAULT '' CHECK (length(contact) <= 500);
ALTER TABLE supplier ADD COLUMN address text NOT NULL DEFAULT '' CHECK (length(address) <= 500);
-- The approval or registration number of the slaughterhouse or farm.
ALTER TABLE supplier ADD COLUMN approval text NOT NULL DEFAULT '' CHECK (length(approval) <= 80);

-- As the papers say it; null: nobody has shown it.
ALTER TABLE lot ADD COLUMN born_in text CHECK (length(born_in) BETWEEN 1 AND 60);
ALTER TABLE lot ADD COLUMN raised_in text CHECK (length(raised_in) BETWEEN 1 AND 60);
ALTER TABLE lot ADD COLUMN bse text CHECK (bse IN ('negligible', 'controlled', 'undetermined'));

CREATE OR REPLACE FUNCTION lot_rules() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.by_product_at IS NOT NULL AND NEW.by_product_at IS DISTINCT FROM OLD.by_product_at THEN
    RAISE EXCEPTION 'lot % was treated as a by-product and does not come back', OLD.code USING ERRCODE = 'FQ001';
  END IF;
  IF (NEW.id, NEW.kitchen_id, NEW.code, NEW.supplier_id, NEW.part_id, NEW.what, NEW.grams, NEW.arrived_at, NEW.arrival_c,
      NEW.kind, NEW.species, NEW.count, NEW.age_months_at_most, NEW.trade_lot, NEW.slaughtered_on, NEW.cost, NEW.delivery_id,
      NEW.born_in, NEW.raised_in, NEW.bse)
     IS DISTINCT FROM
     (OLD.id, OLD.kitchen_id, OLD.code, OLD.supplier_id, OLD.part_id, OLD.what, OLD.grams, OLD.arrived_at, OLD.arrival_c,
      OLD.kind, OLD.species, OLD.count, OLD.age_months_at_most, OLD.trade_lot, OLD.slaughtered_on, OLD.cost, OLD.delivery_id,
      OLD.born_in, OLD.raised_in, OLD.bse) THEN
    RAISE EXCEPTION 'what lot % was when it came does not change', OLD.code USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;

-- What a batch drew and did not use goes back by a line of its own.
ALTER TABLE lot_move DROP CONSTRAINT lot_move_what_check;
ALTER TABLE lot_move ADD CONSTRAINT lot_move_what_check CHECK (what IN ('drawn', 'put back', 'broken down', 'frozen', 'thawed', 'thrown away', 'made a by-product', 'weighed again', 'use-by shortened'));
ALTER TABLE lot_move ADD CONSTRAINT lot_move_put_back_to CHECK (what <> 'put back' OR batch_id IS NOT NULL);
CREATE INDEX lot_move_batch ON lot_move (batch_id) WHERE batch_id IS NOT NULL;

-- A letter is kept as it came, as a picture or as a PDF.
ALTER TABLE photo DROP CONSTRAINT photo_mime_check;
ALTER TABLE photo ADD CONSTRAINT photo_mime_check CHECK (mime IN ('image/jpeg', 'image/png', 'image/webp', 'application/pdf'));
ALTER TABLE photo DROP CONSTRAINT photo_bytes_check;
ALTER TABLE photo ADD CONSTRAINT photo_bytes_check CHECK (length(bytes) BETWEEN 1 AND 6000000);
CREATE TRIGGER photo_is_not_emptied BEFORE TRUNCATE ON photo FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
