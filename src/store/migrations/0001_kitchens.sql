-- Every kitchen's records stand apart: each row names its kitchen, and references never cross from one to another.

CREATE TABLE kitchen (
  id uuid PRIMARY KEY,
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  demo boolean NOT NULL,
  place text NOT NULL CHECK (place IN ('GB-ENG', 'GB-SCT', 'GB-WLS', 'GB-NIR', 'EU', 'US')),
  zone text NOT NULL CHECK (length(zone) BETWEEN 1 AND 60),
  currency text NOT NULL CHECK (currency ~ '^[A-Z]{3}$'),
  units text NOT NULL CHECK (units IN ('metric', 'US')),
  created_at timestamptz NOT NULL,
  put_away_at timestamptz
);

CREATE TABLE person (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  role text NOT NULL CHECK (role IN ('head chef', 'cook', 'buyer', 'auditor')),
  created_at timestamptz NOT NULL,
  UNIQUE (kitchen_id, id)
);

-- One line for everything that anybody did; each line's hash covers the line before it.
CREATE TABLE journal (
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  seq integer NOT NULL CHECK (seq >= 1),
  at timestamptz NOT NULL,
  person_id uuid NOT NULL,
  by_name text NOT NULL,
  action text NOT NULL CHECK (length(action) BETWEEN 1 AND 60),
  subject text NOT NULL CHECK (length(subject) BETWEEN 1 AND 60),
  subject_id uuid NOT NULL,
  summary text NOT NULL,
  details jsonb NOT NULL,
  prev_hash text NOT NULL CHECK (prev_hash ~ '^[0-9a-f]{64}$'),
  hash text NOT NULL CHECK (hash ~ '^[0-9a-f]{64}$'),
  PRIMARY KEY (kitchen_id, seq),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX journal_subject ON journal (kitchen_id, subject_id);

-- FQ001 is this program's own error code: a record that may only be added to.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'rows of % are only added to', TG_TABLE_NAME USING ERRCODE = 'FQ001';
END;
$$;

CREATE TRIGGER journal_only_grows BEFORE UPDATE OR DELETE ON journal
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER journal_is_not_emptied BEFORE TRUNCATE ON journal
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TRIGGER kitchen_is_not_deleted BEFORE DELETE ON kitchen
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
