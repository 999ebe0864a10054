-- A dish is its versions; a draft may be saved over, every save is kept; a signed version never changes again.

CREATE TABLE dish (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  species text NOT NULL CHECK (length(species) BETWEEN 1 AND 40),
  part text NOT NULL CHECK (length(part) BETWEEN 1 AND 80),
  story text NOT NULL,
  stage text NOT NULL CHECK (stage IN ('idea', 'in trial', 'signed', 'retired')),
  created_at timestamptz NOT NULL,
  updated_at timestamptz NOT NULL,
  UNIQUE (kitchen_id, id)
);

CREATE TABLE version (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  dish_id uuid NOT NULL,
  number integer NOT NULL CHECK (number >= 1),
  rev integer NOT NULL CHECK (rev >= 0),
  status text NOT NULL CHECK (status IN ('draft', 'signed')),
  reason text NOT NULL,
  method jsonb NOT NULL CHECK (jsonb_typeof(method) = 'array'),
  created_at timestamptz NOT NULL,
  created_by uuid NOT NULL,
  saved_at timestamptz NOT NULL,
  saved_by uuid NOT NULL,
  signed_at timestamptz,
  signed_by uuid,
  evidence jsonb,
  UNIQUE (kitchen_id, id),
  UNIQUE (dish_id, number),
  FOREIGN KEY (kitchen_id, dish_id) REFERENCES dish (kitchen_id, id),
  FOREIGN KEY (kitchen_id, created_by) REFERENCES person (kitchen_id, id),
  FOREIGN KEY (kitchen_id, saved_by) REFERENCES person (kitchen_id, id),
  FOREIGN KEY (kitchen_id, signed_by) REFERENCES person (kitchen_id, id),
  CHECK ((status = 'signed') = (signed_at IS NOT NULL)),
  CHECK ((status = 'signed') = (signed_by IS NOT NULL)),
  CHECK ((status = 'signed') = (evidence IS NOT NULL))
);

CREATE FUNCTION refuse_change_of_signed() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.status = 'signed' THEN
    RAISE EXCEPTION 'version % is signed and frozen', OLD.number USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER version_signed_is_frozen BEFORE UPDATE ON version
  FOR EACH ROW EXECUTE FUNCTION refuse_change_of_signed();
CREATE TRIGGER version_is_not_deleted BEFORE DELETE ON version
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER version_is_not_emptied BEFORE TRUNCATE ON version
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TABLE version_save (
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  version_id uuid NOT NULL,
  rev integer NOT NULL CHECK (rev >= 0),
  method jsonb NOT NULL,
  saved_at timestamptz NOT NULL,
  saved_by uuid NOT NULL,
  PRIMARY KEY (version_id, rev),
  FOREIGN KEY (kitchen_id, version_id) REFERENCES version (kitchen_id, id),
  FOREIGN KEY (kitchen_id, saved_by) REFERENCES person (kitchen_id, id)
);
CREATE TRIGGER version_save_only_grows BEFORE UPDATE OR DELETE ON version_save
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER version_save_is_not_emptied BEFORE TRUNCATE ON version_save
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TABLE trial (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  dish_id uuid NOT NULL,
  version_id uuid NOT NULL,
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  expect text NOT NULL,
  started_at timestamptz NOT NULL,
  started_by uuid NOT NULL,
  conclusion text,
  closed_at timestamptz,
  closed_by uuid,
  UNIQUE (kitchen_id, id),
  FOREIGN KEY (kitchen_id, dish_id) REFERENCES dish (kitchen_id, id),
  FOREIGN KEY (kitchen_id, version_id) REFERENCES version (kitchen_id, id),
  FOREIGN KEY (kitchen_id, started_by) REFERENCES person (kitchen_id, id),
  FOREIGN KEY (kitchen_id, closed_by) REFERENCES person (kitchen_id, id),
  CHECK ((closed_at IS NULL) = (conclusion IS NULL)),
  CHECK ((closed_at IS NULL) = (closed_by IS NULL))
);

CREATE FUNCTION refuse_change_of_closed_trial() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD.closed_at IS NOT NULL THEN
    RAISE EXCEPTION 'trial % is closed', OLD.name USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER trial_closed_is_frozen BEFORE UPDATE ON trial
  FOR EACH ROW EXECUTE FUNCTION refuse_change_of_closed_trial();
CREATE TRIGGER trial_is_not_deleted BEFORE DELETE ON trial
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
