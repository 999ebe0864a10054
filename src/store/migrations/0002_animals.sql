-- What comes in: who from, which parts, which lots, and the ingredients that go with them.

CREATE TABLE supplier (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  note text NOT NULL,
  created_at timestamptz NOT NULL,
  UNIQUE (kitchen_id, id)
);

CREATE TABLE part (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  species text NOT NULL CHECK (length(species) BETWEEN 1 AND 40),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
  share_pct double precision CHECK (share_pct BETWEEN 0 AND 100),
  use text NOT NULL CHECK (use IN ('menu', 'kitchen', 'thrown away')),
  created_at timestamptz NOT NULL,
  UNIQUE (kitchen_id, id),
  UNIQUE (kitchen_id, species, name)
);

CREATE TABLE lot (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  code text NOT NULL CHECK (length(code) BETWEEN 1 AND 60),
  supplier_id uuid,
  part_id uuid,
  what text NOT NULL CHECK (length(what) BETWEEN 1 AND 120),
  grams double precision NOT NULL CHECK (grams > 0 AND grams <= 10000000),
  arrived_at timestamptz NOT NULL,
  arrival_c double precision CHECK (arrival_c BETWEEN -60 AND 60),
  note text NOT NULL,
  created_at timestamptz NOT NULL,
  UNIQUE (kitchen_id, id),
  UNIQUE (kitchen_id, code),
  FOREIGN KEY (kitchen_id, supplier_id) REFERENCES supplier (kitchen_id, id),
  FOREIGN KEY (kitchen_id, part_id) REFERENCES part (kitchen_id, id)
);

CREATE TABLE ingredient (
  id uuid PRIMARY KEY,
  kitchen_id uuid NOT NULL REFERENCES kitchen (id),
  name text NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
  composition jsonb,
  salt double precision CHECK (salt BETWEEN 0 AND 1),
  source text NOT NULL,
  price_per_kg bigint CHECK (price_per_kg >= 0),
  allergens jsonb NOT NULL,
  created_at timestamptz NOT NULL,
  UNIQUE (kitchen_id, id),
  UNIQUE (kitchen_id, name)
);
