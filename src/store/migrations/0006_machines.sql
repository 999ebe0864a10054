-- The kitchen's own machines, and what probe logs have said of them.

CREATE TABLE machine (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  medium text NOT NULL CHECK (length(medium) BETWEEN 1 AND 40),
  note text NOT NULL CHECK (length(note) <= 500),
  created_at timestamptz NOT NULL,
  UNIQUE (kitchen_id, id),
  UNIQUE (kitchen_id, name)
);
CREATE TRIGGER machine_is_not_deleted BEFORE DELETE ON machine
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

ALTER TABLE probe_log ADD UNIQUE (kitchen_id, id);

CREATE TABLE machine_fit (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  machine_id uuid NOT NULL,
  log_id uuid NOT NULL,
  stage text NOT NULL CHECK (length(stage) BETWEEN 1 AND 80),
  from_min double precision NOT NULL,
  -- What was asked, without the readings: those are the log's.
  input jsonb NOT NULL CHECK (jsonb_typeof(input) = 'object'),
  input_sha256 text NOT NULL CHECK (input_sha256 ~ '^[0-9a-f]{64}$'),
  h jsonb NOT NULL CHECK (jsonb_typeof(h) = 'object'),
  fitted jsonb NOT NULL CHECK (jsonb_typeof(fitted) = 'object'),
  rmse_c double precision NOT NULL CHECK (rmse_c >= 0),
  warnings jsonb NOT NULL CHECK (jsonb_typeof(warnings) = 'array'),
  engine text NOT NULL,
  person_id uuid NOT NULL,
  kept_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, machine_id) REFERENCES machine (kitchen_id, id),
  FOREIGN KEY (kitchen_id, log_id) REFERENCES probe_log (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX machine_fit_machine ON machine_fit (machine_id, line);
CREATE TRIGGER machine_fit_only_grows BEFORE UPDATE OR DELETE ON machine_fit
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER machine_fit_is_not_emptied BEFORE TRUNCATE ON machine_fit
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
