-- What was made and measured: batches of a signed version, their readings, decisions and probe logs.

CREATE TABLE batch (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  version_id uuid NOT NULL,
  code text NOT NULL CHECK (length(code) BETWEEN 1 AND 60),
  pieces integer NOT NULL CHECK (pieces BETWEEN 1 AND 10000),
  started_at timestamptz NOT NULL,
  started_by uuid NOT NULL,
  status text NOT NULL CHECK (status IN ('open', 'closed', 'discarded')),
  closed_at timestamptz,
  closed_by uuid,
  closing_note text,
  UNIQUE (kitchen_id, id),
  UNIQUE (kitchen_id, code),
  FOREIGN KEY (kitchen_id, version_id) REFERENCES version (kitchen_id, id),
  FOREIGN KEY (kitchen_id, started_by) REFERENCES person (kitchen_id, id),
  FOREIGN KEY (kitchen_id, closed_by) REFERENCES person (kitchen_id, id),
  CHECK ((status = 'open') = (closed_at IS NULL)),
  CHECK ((status = 'open') = (closed_by IS NULL)),
  CHECK ((status = 'open') = (closing_note IS NULL))
);

CREATE FUNCTION batch_rules() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'INSERT' THEN
    IF NOT EXISTS (SELECT 1 FROM version WHERE id = NEW.version_id AND status = 'signed') THEN
      RAISE EXCEPTION 'a batch is made from a signed version' USING ERRCODE = 'FQ001';
    END IF;
  ELSIF OLD.status <> 'open' THEN
    RAISE EXCEPTION 'batch % is %', OLD.code, OLD.status USING ERRCODE = 'FQ001';
  ELSIF (NEW.id, NEW.kitchen_id, NEW.version_id, NEW.code, NEW.pieces, NEW.started_at, NEW.started_by)
     IS DISTINCT FROM
        (OLD.id, OLD.kitchen_id, OLD.version_id, OLD.code, OLD.pieces, OLD.started_at, OLD.started_by) THEN
    RAISE EXCEPTION 'what batch % is made of does not change', OLD.code USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER batch_rules BEFORE INSERT OR UPDATE ON batch FOR EACH ROW EXECUTE FUNCTION batch_rules();
CREATE TRIGGER batch_is_not_deleted BEFORE DELETE ON batch
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE TABLE batch_lot (
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  batch_id uuid NOT NULL,
  lot_id uuid NOT NULL,
  PRIMARY KEY (batch_id, lot_id),
  FOREIGN KEY (kitchen_id, batch_id) REFERENCES batch (kitchen_id, id),
  FOREIGN KEY (kitchen_id, lot_id) REFERENCES lot (kitchen_id, id)
);
CREATE TRIGGER batch_lot_only_grows BEFORE UPDATE OR DELETE ON batch_lot
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE FUNCTION refuse_when_batch_is_shut() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.batch_id IS NOT NULL AND EXISTS (SELECT 1 FROM batch WHERE id = NEW.batch_id AND status <> 'open') THEN
    RAISE EXCEPTION 'the batch is no longer open' USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;

CREATE TABLE reading (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  batch_id uuid NOT NULL,
  step_id uuid NOT NULL,
  ask_id uuid NOT NULL,
  kind text NOT NULL CHECK (kind IN ('weight', 'temperature', 'duration', 'count', 'tick', 'note')),
  value double precision CHECK (value BETWEEN -1e9 AND 1e9),
  note text NOT NULL,
  at timestamptz NOT NULL,
  corrects uuid,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  holds text NOT NULL CHECK (holds IN ('in', 'out', 'no limit')),
  -- The order in which readings were written down, whatever the clocks said.
  line bigint GENERATED ALWAYS AS IDENTITY,
  UNIQUE (batch_id, id),
  CHECK ((value IS NULL) = (kind = 'note')),
  CHECK (kind <> 'tick' OR value = 1),
  FOREIGN KEY (kitchen_id, batch_id) REFERENCES batch (kitchen_id, id),
  FOREIGN KEY (batch_id, corrects) REFERENCES reading (batch_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX reading_batch ON reading (batch_id, line);
CREATE TRIGGER reading_open BEFORE INSERT ON reading
  FOR EACH ROW EXECUTE FUNCTION refuse_when_batch_is_shut();
CREATE TRIGGER reading_only_grows BEFORE UPDATE OR DELETE ON reading
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER reading_is_not_emptied BEFORE TRUNCATE ON reading
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TABLE decision (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  batch_id uuid NOT NULL,
  step_id uuid NOT NULL,
  ask_id uuid,
  what text NOT NULL CHECK (what IN ('held longer', 'cooked again', 'chilled faster', 'portioned smaller', 'discarded', 'kept back to ask')),
  reason text NOT NULL CHECK (length(reason) BETWEEN 1 AND 1000),
  at timestamptz NOT NULL,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, batch_id) REFERENCES batch (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX decision_batch ON decision (batch_id, line);
CREATE TRIGGER decision_open BEFORE INSERT ON decision
  FOR EACH ROW EXECUTE FUNCTION refuse_when_batch_is_shut();
CREATE TRIGGER decision_only_grows BEFORE UPDATE OR DELETE ON decision
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER decision_is_not_emptied BEFORE TRUNCATE ON decision
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TABLE probe_log (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  batch_id uuid,
  trial_id uuid,
  dish_id uuid,
  step_id uuid,
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 200),
  channel text NOT NULL CHECK (length(channel) BETWEEN 1 AND 120),
  -- The file as it came.
  original text NOT NULL,
  sha256 text NOT NULL CHECK (sha256 ~ '^[0-9a-f]{64}$'),
  how jsonb NOT NULL,
  points jsonb NOT NULL CHECK (jsonb_typeof(points) = 'array'),
  started_at timestamptz,
  warnings jsonb NOT NULL,
  judgements jsonb NOT NULL CHECK (jsonb_typeof(judgements) = 'array'),
  person_id uuid NOT NULL,
  imported_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, batch_id) REFERENCES batch (kitchen_id, id),
  FOREIGN KEY (kitchen_id, trial_id) REFERENCES trial (kitchen_id, id),
  FOREIGN KEY (kitchen_id, dish_id) REFERENCES dish (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX probe_log_batch ON probe_log (batch_id, line);
CREATE INDEX probe_log_dish ON probe_log (dish_id, line);
CREATE TRIGGER probe_log_open BEFORE INSERT ON probe_log
  FOR EACH ROW EXECUTE FUNCTION refuse_when_batch_is_shut();
CREATE TRIGGER probe_log_only_grows BEFORE UPDATE OR DELETE ON probe_log
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER probe_log_is_not_emptied BEFORE TRUNCATE ON probe_log
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
