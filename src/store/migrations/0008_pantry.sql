-- The pantry: what an ingredient rests on and costs, who looked at its label, what an hour and a kilowatt-hour cost.

-- An ingredient of the kitchen's own. `nutrients` holds what differs from the row of the published table that it rests on,
-- or, without a row, all that is known; a key that is not there is the row's, or not known. Allergens null: nobody has said.
ALTER TABLE ingredient RENAME COLUMN allergens TO allergens_typed;
ALTER TABLE ingredient
  ADD COLUMN label_name text CHECK (length(label_name) BETWEEN 1 AND 120),
  ADD COLUMN table_id text CHECK (table_id ~ '^[a-z0-9-]{2,80}$'),
  ADD COLUMN nutrients jsonb NOT NULL DEFAULT '{}' CHECK (jsonb_typeof(nutrients) = 'object'),
  ADD COLUMN allergens jsonb CHECK (jsonb_typeof(allergens) = 'array'),
  ADD COLUMN trim_pct double precision NOT NULL DEFAULT 0 CHECK (trim_pct >= 0 AND trim_pct < 100),
  ADD COLUMN density_kg_m3 double precision CHECK (density_kg_m3 BETWEEN 50 AND 3000),
  ADD COLUMN piece_g double precision CHECK (piece_g > 0 AND piece_g <= 100000),
  ADD COLUMN made_of text,
  ADD COLUMN note text NOT NULL DEFAULT '',
  ADD COLUMN rev integer NOT NULL DEFAULT 0 CHECK (rev >= 0),
  ADD COLUMN put_away_at timestamptz;

-- What was entered before: six components and salt, as they were; of saturates, sugars and alcohol nobody has said anything.
UPDATE ingredient SET nutrients = jsonb_strip_nulls(
  CASE WHEN jsonb_typeof(composition) = 'object' THEN composition ELSE '{}' END || jsonb_build_object('salt', salt));

-- Allergens were words. An empty list could not tell none from not asked, so it says nothing; words that are not understood
-- are kept as they were typed, and the ingredient is to be asked about again.
WITH word (typed, allergen, kind) AS (VALUES
  ('gluten', 'gluten', NULL), ('wheat', 'gluten', 'wheat'), ('rye', 'gluten', 'rye'), ('barley', 'gluten', 'barley'),
  ('oats', 'gluten', 'oats'), ('spelt', 'gluten', 'spelt'), ('crustaceans', 'crustaceans', NULL), ('crustacean', 'crustaceans', NULL),
  ('eggs', 'eggs', NULL), ('egg', 'eggs', NULL), ('fish', 'fish', NULL), ('peanuts', 'peanuts', NULL), ('peanut', 'peanuts', NULL),
  ('soybeans', 'soybeans', NULL), ('soya', 'soybeans', NULL), ('soy', 'soybeans', NULL), ('milk', 'milk', NULL),
  ('nuts', 'nuts', NULL), ('almond', 'nuts', 'almond'), ('almonds', 'nuts', 'almond'), ('hazelnut', 'nuts', 'hazelnut'),
  ('hazelnuts', 'nuts', 'hazelnut'), ('walnut', 'nuts', 'walnut'), ('walnuts', 'nuts', 'walnut'),
  ('celery', 'celery', NULL), ('mustard', 'mustard', NULL), ('sesame', 'sesame', NULL), ('sulphites', 'sulphites', NULL),
  ('sulphur dioxide', 'sulphites', NULL), ('lupin', 'lupin', NULL), ('molluscs', 'molluscs', NULL), ('mollusc', 'molluscs', NULL)
), typed AS (
  SELECT i.id,
    jsonb_agg(jsonb_strip_nulls(jsonb_build_object('allergen', word.allergen, 'as', word.kind)) ORDER BY w.nth) AS marks,
    bool_and(word.allergen IS NOT NULL) AS understood,
    string_agg(w.typed, ', ' ORDER BY w.nth) AS words
  FROM ingredient i
  CROSS JOIN LATERAL jsonb_array_elements_text(i.allergens_typed) WITH ORDINALITY AS w (typed, nth)
  LEFT JOIN word ON word.typed = lower(trim(w.typed))
  GROUP BY i.id
)
UPDATE ingredient SET
  allergens = CASE WHEN typed.understood THEN typed.marks END,
  note = CASE WHEN typed.understood THEN '' ELSE 'Allergens as they were typed before: ' || typed.words || '. Say which of the fourteen they are.' END
FROM typed WHERE typed.id = ingredient.id;

-- What was paid, by the pack, from a day on. Only added to.
CREATE TABLE ingredient_price (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  ingredient_id uuid NOT NULL,
  pack_g double precision NOT NULL CHECK (pack_g > 0 AND pack_g <= 10000000),
  price bigint NOT NULL CHECK (price >= 0),
  supplier_id uuid,
  from_day date NOT NULL,
  note text NOT NULL,
  person_id uuid,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, ingredient_id) REFERENCES ingredient (kitchen_id, id),
  FOREIGN KEY (kitchen_id, supplier_id) REFERENCES supplier (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
INSERT INTO ingredient_price (id, kitchen_id, ingredient_id, pack_g, price, from_day, note, recorded_at)
  SELECT gen_random_uuid(), kitchen_id, id, 1000, price_per_kg, (created_at AT TIME ZONE 'UTC')::date,
    'Entered by the kilogram, before prices were kept by the pack.', created_at
  FROM ingredient WHERE price_per_kg IS NOT NULL;
-- Who entered those is in the journal only; from here on the row says it.
ALTER TABLE ingredient_price ADD CONSTRAINT ingredient_price_is_somebodys CHECK (person_id IS NOT NULL) NOT VALID;
CREATE INDEX ingredient_price_ingredient ON ingredient_price (kitchen_id, ingredient_id, from_day, line);
CREATE TRIGGER ingredient_price_only_grows BEFORE UPDATE OR DELETE ON ingredient_price
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER ingredient_price_is_not_emptied BEFORE TRUNCATE ON ingredient_price
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

ALTER TABLE ingredient DROP COLUMN composition, DROP COLUMN salt, DROP COLUMN price_per_kg, DROP COLUMN allergens_typed;

-- An ingredient as it was after each change, the first being when it was added.
CREATE TABLE ingredient_change (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  ingredient_id uuid NOT NULL,
  rev integer NOT NULL CHECK (rev >= 0),
  became jsonb NOT NULL CHECK (jsonb_typeof(became) = 'object'),
  reason text NOT NULL,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  UNIQUE (ingredient_id, rev),
  FOREIGN KEY (kitchen_id, ingredient_id) REFERENCES ingredient (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE TRIGGER ingredient_change_only_grows BEFORE UPDATE OR DELETE ON ingredient_change
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER ingredient_change_is_not_emptied BEFORE TRUNCATE ON ingredient_change
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE FUNCTION ingredient_rules() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW.rev <> OLD.rev + 1 OR NEW.id <> OLD.id OR NEW.kitchen_id <> OLD.kitchen_id THEN
    RAISE EXCEPTION 'ingredient % changes one step at a time, each of which is kept', OLD.name USING ERRCODE = 'FQ001';
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER ingredient_rules BEFORE UPDATE ON ingredient FOR EACH ROW EXECUTE FUNCTION ingredient_rules();
CREATE TRIGGER ingredient_is_not_deleted BEFORE DELETE ON ingredient
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

-- Who looked at which label, and what it says. `marks` is all that the label emphasises; an empty list is none of the fourteen.
CREATE TABLE allergen_looked (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  ingredient_id uuid NOT NULL,
  product text NOT NULL CHECK (length(product) BETWEEN 1 AND 200),
  supplier_id uuid,
  says text NOT NULL,
  marks jsonb NOT NULL CHECK (jsonb_typeof(marks) = 'array'),
  may_contain jsonb NOT NULL CHECK (jsonb_typeof(may_contain) = 'array'),
  at timestamptz NOT NULL,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, ingredient_id) REFERENCES ingredient (kitchen_id, id),
  FOREIGN KEY (kitchen_id, supplier_id) REFERENCES supplier (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX allergen_looked_ingredient ON allergen_looked (kitchen_id, ingredient_id, line);
CREATE TRIGGER allergen_looked_only_grows BEFORE UPDATE OR DELETE ON allergen_looked
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER allergen_looked_is_not_emptied BEFORE TRUNCATE ON allergen_looked
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- What the kitchen knows it may carry over from one food to another. Ended by a row of its own.
CREATE TABLE declared_risk (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  allergen text NOT NULL CHECK (allergen IN ('gluten', 'crustaceans', 'eggs', 'fish', 'peanuts', 'soybeans', 'milk', 'nuts', 'celery', 'mustard', 'sesame', 'sulphites', 'lupin', 'molluscs')),
  kind text CHECK (length(kind) BETWEEN 1 AND 40),
  dish_id uuid,
  reason text NOT NULL CHECK (length(reason) BETWEEN 1 AND 500),
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  UNIQUE (kitchen_id, id),
  FOREIGN KEY (kitchen_id, dish_id) REFERENCES dish (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE TRIGGER declared_risk_only_grows BEFORE UPDATE OR DELETE ON declared_risk
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER declared_risk_is_not_emptied BEFORE TRUNCATE ON declared_risk
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

CREATE TABLE declared_risk_end (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  risk_id uuid NOT NULL UNIQUE,
  reason text NOT NULL CHECK (length(reason) BETWEEN 1 AND 500),
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, risk_id) REFERENCES declared_risk (kitchen_id, id),
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE TRIGGER declared_risk_end_only_grows BEFORE UPDATE OR DELETE ON declared_risk_end
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER declared_risk_end_is_not_emptied BEFORE TRUNCATE ON declared_risk_end
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- What hands, energy and shelf space cost, and what is added to a price: the newest row whose day has come holds.
CREATE TABLE kitchen_rates (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  from_day date NOT NULL,
  content jsonb NOT NULL CHECK (jsonb_typeof(content) = 'object'),
  note text NOT NULL,
  person_id uuid NOT NULL,
  recorded_at timestamptz NOT NULL,
  line bigint GENERATED ALWAYS AS IDENTITY,
  FOREIGN KEY (kitchen_id, person_id) REFERENCES person (kitchen_id, id)
);
CREATE INDEX kitchen_rates_from ON kitchen_rates (kitchen_id, from_day, line);
CREATE TRIGGER kitchen_rates_only_grows BEFORE UPDATE OR DELETE ON kitchen_rates
  FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER kitchen_rates_is_not_emptied BEFORE TRUNCATE ON kitchen_rates
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- The row of the published table that a part is reckoned by: chosen, or 'none' where somebody has said that none fits;
-- null: nobody has chosen, and it is guessed by its name.
ALTER TABLE part ADD COLUMN table_id text CHECK (table_id ~ '^[a-z0-9-]{2,80}$');
