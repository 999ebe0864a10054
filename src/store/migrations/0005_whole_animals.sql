-- From a supplier's promise to parts on the shelf: specifications, deliveries, breakdowns, moves of lots, questions to the authority.

-- What is asked of a supplier, in writing. A version that was sent never changes again.
CREATE TABLE specification (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  supplier_id uuid NOT NULL,
  species text NOT NULL CHECK (length(species) BETWEEN 1 AND 40),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  created_at timestamptz NOT NULL,
  created_by uuid NOT NULL,
  ended_at timestamptz,
  UNIQUE (kitchen_id, id),
  FOREIGN KEY (kitchen_id, supplier_id) REFERENCES supplier (kitchen_id, id),
  FOREIGN KEY (kitchen_id, created_by) REFERENCES person (kitchen_id, id)
);
CREATE TRIGGER specification_is_not_deleted BEFORE DELETE ON specification
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TABLE specification_version (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  specification_id uuid NOT NULL,
  number integer NOT NULL CHECK (number >= 1),
  rev integer NOT NULL CHECK (rev >= 0),
  status text NOT NULL CHECK (status IN ('draft', 'sent')),
  reason text NOT NULL,
  content jsonb NOT NULL CHECK (jsonb_typeof(content) = 'object'),
  created_at timestamptz NOT NULL,
  created_by uuid NOT NULL,
  saved_at timestamptz NOT NULL,
  saved_by uuid NOT NULL,
  sent_at timestamptz,
  sent_by uuid,
  UNIQUE (kitchen_id, id),
  UNIQUE (specification_id, number),
  FOREIGN KEY (kitchen_id, specification_id) REFERENCES specification (kitchen_id, id),
  FOREIGN KEY (kitchen_id, created_by) REFERENCES person (kitchen_id, id),
  FOREIGN KEY (kitchen_id, saved_by) REFERENCES person (kitchen_id, id),
  FOREIGN KEY (kitchen_id, sent_by) REFERENCES person (kitchen_id, id),
  CHECK ((status = 'sent') = (sent_at IS NOT NULL)),
  CHECK ((status = 'sent') = (sent_by IS NOT NULL))
);
CREATE FUNCTION refuse_change_of_sent() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.status = 'sent' THEN
    RAISE EXCEPTION 'version % was sent and does not change', OLD.number USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER specification_sent_is_frozen BEFORE UPDATE ON specification_version
  FOR EACH ROW EXECUTE FUNCTION refuse_change_of_sent();
CREATE TRIGGER specification_version_is_not_deleted BEFORE DELETE ON specification_version
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER specification_version_is_not_emptied BEFORE TRUNCATE ON specification_version
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- What the supplier said to it.
CREATE TABLE specification_answer (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  version_id uuid NOT NULL,
  answer text NOT NULL CHECK (answer IN ('agreed', 'agreed with changes', 'declined')),
  said_by text NOT NULL CHECK (length(said_by) BETWEEN 1 AND 120),
  note text NOT NULL,
  at timestamptz NOT NULL,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, version_id) REFERENCES specification_version (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX specification_answer_version ON specification_answer (version_id, line);
CREATE TRIGGER specification_answer_only_grows BEFORE UPDATE OR DELETE ON specification_answer
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER specification_answer_is_not_emptied BEFORE TRUNCATE ON specification_answer
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- What came, checked point by point, and what was decided.
CREATE TABLE delivery (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  supplier_id uuid NOT NULL,
  specification_version_id uuid,
  arrived_at timestamptz NOT NULL,
  documents text NOT NULL,
  lines jsonb NOT NULL CHECK (jsonb_typeof(lines) = 'array'),
  checks jsonb NOT NULL CHECK (jsonb_typeof(checks) = 'array'),
  decision text NOT NULL CHECK (decision IN ('accepted', 'accepted with deviation', 'refused')),
  reason text NOT NULL,
  points_met integer NOT NULL CHECK (points_met >= 0),
  points_asked integer NOT NULL CHECK (points_asked >= points_met),
  warmest_c double precision CHECK (warmest_c BETWEEN -60 AND 60),
  grams double precision NOT NULL CHECK (grams >= 0),
  cost bigint CHECK (cost >= 0),
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  UNIQUE (kitchen_id, id),
  FOREIGN KEY (kitchen_id, supplier_id) REFERENCES supplier (kitchen_id, id),
  FOREIGN KEY (kitchen_id, specification_version_id) REFERENCES specification_version (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id),
  CHECK (decision = 'accepted' OR length(reason) >= 1)
);
CREATE INDEX delivery_supplier ON delivery (kitchen_id, supplier_id, arrived_at);
CREATE INDEX delivery_arrived ON delivery (kitchen_id, arrived_at);
CREATE TRIGGER delivery_only_grows BEFORE UPDATE OR DELETE ON delivery
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER delivery_is_not_emptied BEFORE TRUNCATE ON delivery
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- A picture, made small on the device that took it.
CREATE TABLE photo (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  subject text NOT NULL CHECK (length(subject) BETWEEN 1 AND 60),
  subject_id uuid NOT NULL,
  mime text NOT NULL CHECK (mime IN ('image/jpeg', 'image/png', 'image/webp')),
  bytes bytea NOT NULL CHECK (length(bytes) BETWEEN 1 AND 2000000),
  sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
  caption text NOT NULL,
  taken_at timestamptz NOT NULL,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX photo_subject ON photo (kitchen_id, subject_id);
CREATE TRIGGER photo_only_grows BEFORE UPDATE OR DELETE ON photo
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

-- Parts learn how long they keep, what they are worth and which temperature limits they come under.
ALTER TABLE part ADD COLUMN class text CHECK (class IN ('poultry', 'red meat', 'offal', 'blood', 'large game', 'small game', 'rabbit', 'fish', 'fat and bone'));
ALTER TABLE part ADD COLUMN life_days double precision CHECK (life_days > 0 AND life_days <= 3650);
ALTER TABLE part ADD COLUMN value_per_kg bigint CHECK (value_per_kg >= 0);
ALTER TABLE part ADD COLUMN cost_share double precision CHECK (cost_share >= 0 AND cost_share <= 1000000);

-- A lot: what it was when it was made does not change; what is left of it follows from its moves.
ALTER TABLE lot ADD COLUMN kind text NOT NULL DEFAULT 'part' CHECK (kind IN ('whole', 'part', 'other'));
ALTER TABLE lot ADD COLUMN species text CHECK (length(species) BETWEEN 1 AND 40);
ALTER TABLE lot ADD COLUMN count integer CHECK (count >= 1 AND count <= 100000);
ALTER TABLE lot ADD COLUMN age_months_at_most double precision CHECK (age_months_at_most >= 0 AND age_months_at_most <= 600);
ALTER TABLE lot ADD COLUMN trade_lot text CHECK (length(trade_lot) BETWEEN 1 AND 80);
ALTER TABLE lot ADD COLUMN slaughtered_on date;
ALTER TABLE lot ADD COLUMN use_by date;
ALTER TABLE lot ADD COLUMN cost bigint CHECK (cost >= 0);
ALTER TABLE lot ADD COLUMN delivery_id uuid;
ALTER TABLE lot ADD COLUMN left_grams double precision CHECK (left_grams >= 0);
ALTER TABLE lot ADD COLUMN frozen_at timestamptz;
ALTER TABLE lot ADD COLUMN thawed_at timestamptz;
ALTER TABLE lot ADD COLUMN by_product_at timestamptz;
ALTER TABLE lot ADD FOREIGN KEY (kitchen_id, delivery_id) REFERENCES delivery (kitchen_id, id);
UPDATE lot SET left_grams = grams;
ALTER TABLE lot ALTER COLUMN left_grams SET NOT NULL;
CREATE INDEX lot_arrived ON lot (kitchen_id, arrived_at);
CREATE INDEX lot_on_the_shelf ON lot (kitchen_id, use_by) WHERE left_grams > 0;
CREATE INDEX lot_delivery ON lot (delivery_id);

CREATE FUNCTION lot_rules() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.by_product_at IS NOT NULL AND NEW.by_product_at IS DISTINCT FROM OLD.by_product_at THEN
    RAISE EXCEPTION 'lot % was treated as a by-product and does not come back', OLD.code USING ERRCODE = 'FQ001';
  END IF;
  IF (NEW.id, NEW.kitchen_id, NEW.code, NEW.supplier_id, NEW.part_id, NEW.what, NEW.grams, NEW.arrived_at, NEW.arrival_c,
      NEW.kind, NEW.species, NEW.count, NEW.age_months_at_most, NEW.trade_lot, NEW.slaughtered_on, NEW.cost, NEW.delivery_id)
     IS DISTINCT FROM
     (OLD.id, OLD.kitchen_id, OLD.code, OLD.supplier_id, OLD.part_id, OLD.what, OLD.grams, OLD.arrived_at, OLD.arrival_c,
      OLD.kind, OLD.species, OLD.count, OLD.age_months_at_most, OLD.trade_lot, OLD.slaughtered_on, OLD.cost, OLD.delivery_id) THEN
    RAISE EXCEPTION 'what lot % was when it came does not change', OLD.code USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER lot_rules BEFORE UPDATE ON lot FOR EACH ROW EXECUTE FUNCTION lot_rules();
CREATE TRIGGER lot_is_not_deleted BEFORE DELETE ON lot FOR EACH ROW EXECUTE FUNCTION refuse_change();

-- The animals of a lot by their tags: one tag, one animal, once.
CREATE TABLE animal_tag (
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  tag text NOT NULL CHECK (length(tag) BETWEEN 1 AND 60),
  lot_id uuid NOT NULL,
  PRIMARY KEY (kitchen_id, tag),
  FOREIGN KEY (kitchen_id, lot_id) REFERENCES lot (kitchen_id, id)
);
CREATE INDEX animal_tag_lot ON animal_tag (lot_id);
CREATE TRIGGER animal_tag_only_grows BEFORE UPDATE OR DELETE ON animal_tag
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

-- Cutting up: what was taken, the tree it was cut by, every weighing.
CREATE TABLE breakdown_tree (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  species text NOT NULL CHECK (length(species) BETWEEN 1 AND 40),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  nodes jsonb NOT NULL CHECK (jsonb_typeof(nodes) = 'array'),
  created_at timestamptz NOT NULL,
  created_by uuid NOT NULL,
  put_away_at timestamptz,
  UNIQUE (kitchen_id, id),
  FOREIGN KEY (kitchen_id, created_by) REFERENCES person (kitchen_id, id)
);

CREATE TABLE breakdown (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  species text NOT NULL CHECK (length(species) BETWEEN 1 AND 40),
  supplier_id uuid,
  origin text NOT NULL CHECK (origin IN ('here', 'imported')),
  animals integer NOT NULL CHECK (animals BETWEEN 1 AND 10000),
  nodes jsonb NOT NULL CHECK (jsonb_typeof(nodes) = 'array'),
  status text NOT NULL CHECK (status IN ('open', 'finished', 'given up')),
  started_at timestamptz NOT NULL,
  started_by uuid NOT NULL,
  cutter_id uuid NOT NULL,
  finished_at timestamptz,
  finished_by uuid,
  note text NOT NULL,
  -- What came out, kept when it was finished: the balance, the yields, the money.
  outcome jsonb,
  UNIQUE (kitchen_id, id),
  FOREIGN KEY (kitchen_id, supplier_id) REFERENCES supplier (kitchen_id, id),
  FOREIGN KEY (kitchen_id, started_by) REFERENCES person (kitchen_id, id),
  FOREIGN KEY (kitchen_id, cutter_id) REFERENCES person (kitchen_id, id),
  FOREIGN KEY (kitchen_id, finished_by) REFERENCES person (kitchen_id, id),
  CHECK ((status = 'open') = (finished_at IS NULL)),
  CHECK ((status = 'open') = (finished_by IS NULL)),
  CHECK ((status = 'finished') = (outcome IS NOT NULL))
);
CREATE INDEX breakdown_species ON breakdown (kitchen_id, species, started_at);
CREATE FUNCTION breakdown_rules() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.status <> 'open' THEN
    RAISE EXCEPTION 'this breakdown is % and does not change', OLD.status USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER breakdown_rules BEFORE UPDATE ON breakdown FOR EACH ROW EXECUTE FUNCTION breakdown_rules();
CREATE TRIGGER breakdown_is_not_deleted BEFORE DELETE ON breakdown
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TABLE breakdown_lot (
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  breakdown_id uuid NOT NULL,
  lot_id uuid NOT NULL,
  grams double precision NOT NULL CHECK (grams > 0),
  PRIMARY KEY (breakdown_id, lot_id),
  FOREIGN KEY (kitchen_id, breakdown_id) REFERENCES breakdown (kitchen_id, id),
  FOREIGN KEY (kitchen_id, lot_id) REFERENCES lot (kitchen_id, id)
);
CREATE INDEX breakdown_lot_lot ON breakdown_lot (lot_id);
CREATE TRIGGER breakdown_lot_only_grows BEFORE UPDATE OR DELETE ON breakdown_lot
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TABLE weighing (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  breakdown_id uuid NOT NULL,
  node text NOT NULL CHECK (length(node) BETWEEN 1 AND 60),
  animal integer CHECK (animal BETWEEN 1 AND 10000),
  gross_grams double precision NOT NULL CHECK (gross_grams >= 0 AND gross_grams <= 10000000),
  tare_grams double precision NOT NULL CHECK (tare_grams >= 0 AND tare_grams <= gross_grams),
  pieces integer CHECK (pieces BETWEEN 0 AND 100000),
  corrects uuid,
  taken_back boolean NOT NULL,
  at timestamptz NOT NULL,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  UNIQUE (breakdown_id, id),
  FOREIGN KEY (kitchen_id, breakdown_id) REFERENCES breakdown (kitchen_id, id),
  FOREIGN KEY (breakdown_id, corrects) REFERENCES weighing (breakdown_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX weighing_breakdown ON weighing (breakdown_id, line);
CREATE FUNCTION refuse_when_breakdown_is_shut() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM breakdown WHERE id = NEW.breakdown_id AND status <> 'open') THEN
    RAISE EXCEPTION 'the breakdown is no longer open' USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER weighing_open BEFORE INSERT ON weighing
  FOR EACH ROW EXECUTE FUNCTION refuse_when_breakdown_is_shut();
CREATE TRIGGER weighing_only_grows BEFORE UPDATE OR DELETE ON weighing
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER weighing_is_not_emptied BEFORE TRUNCATE ON weighing
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- Which lots a lot was made of.
CREATE TABLE lot_parent (
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  lot_id uuid NOT NULL,
  parent_id uuid NOT NULL,
  breakdown_id uuid,
  PRIMARY KEY (lot_id, parent_id),
  FOREIGN KEY (kitchen_id, lot_id) REFERENCES lot (kitchen_id, id),
  FOREIGN KEY (kitchen_id, parent_id) REFERENCES lot (kitchen_id, id),
  FOREIGN KEY (kitchen_id, breakdown_id) REFERENCES breakdown (kitchen_id, id),
  CHECK (lot_id <> parent_id)
);
CREATE INDEX lot_parent_parent ON lot_parent (parent_id);
CREATE TRIGGER lot_parent_only_grows BEFORE UPDATE OR DELETE ON lot_parent
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

-- What became of a lot, a line at a time. `grams` is what it lost (drawn, thrown away) or what is left by the scales.
CREATE TABLE lot_move (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  lot_id uuid NOT NULL,
  what text NOT NULL CHECK (what IN ('drawn', 'broken down', 'frozen', 'thawed', 'thrown away', 'made a by-product', 'weighed again', 'use-by shortened')),
  grams double precision CHECK (grams >= 0),
  left_grams double precision NOT NULL CHECK (left_grams >= 0),
  use_by date,
  batch_id uuid,
  breakdown_id uuid,
  reason text NOT NULL,
  at timestamptz NOT NULL,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, lot_id) REFERENCES lot (kitchen_id, id),
  FOREIGN KEY (kitchen_id, batch_id) REFERENCES batch (kitchen_id, id),
  FOREIGN KEY (kitchen_id, breakdown_id) REFERENCES breakdown (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX lot_move_lot ON lot_move (lot_id, line);
CREATE TRIGGER lot_move_only_grows BEFORE UPDATE OR DELETE ON lot_move
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lot_move_is_not_emptied BEFORE TRUNCATE ON lot_move
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- May this part be served? What the authority was asked, and what it answered.
CREATE TABLE authority_request (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  dish_id uuid,
  species text NOT NULL CHECK (length(species) BETWEEN 1 AND 40),
  part text NOT NULL CHECK (length(part) BETWEEN 1 AND 80),
  content jsonb NOT NULL CHECK (jsonb_typeof(content) = 'object'),
  asked_at timestamptz NOT NULL,
  asked_by uuid NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  UNIQUE (kitchen_id, id),
  FOREIGN KEY (kitchen_id, dish_id) REFERENCES dish (kitchen_id, id),
  FOREIGN KEY (kitchen_id, asked_by) REFERENCES person (kitchen_id, id)
);
CREATE TRIGGER authority_request_only_grows BEFORE UPDATE OR DELETE ON authority_request
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TABLE authority_answer (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  request_id uuid NOT NULL,
  answer text NOT NULL CHECK (answer IN ('agreed', 'agreed on conditions', 'refused', 'asked for more')),
  authority text NOT NULL CHECK (length(authority) BETWEEN 1 AND 120),
  said_by text NOT NULL CHECK (length(said_by) BETWEEN 1 AND 120),
  reference text NOT NULL CHECK (length(reference) BETWEEN 1 AND 120),
  conditions text NOT NULL,
  dated date NOT NULL,
  until_date date,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, request_id) REFERENCES authority_request (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX authority_answer_request ON authority_answer (request_id, line);
CREATE TRIGGER authority_answer_only_grows BEFORE UPDATE OR DELETE ON authority_answer
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
