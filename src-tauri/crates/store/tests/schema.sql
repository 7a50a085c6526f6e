PRAGMA application_id = 0x43796f76;
PRAGMA user_version = 8;

CREATE TABLE card (
    plan BLOB NOT NULL,
    revision INTEGER NOT NULL CHECK (revision >= 0),
    clinic BLOB NOT NULL,
    taken_ms INTEGER NOT NULL,
    taken_offset_s INTEGER NOT NULL,
    bytes BLOB NOT NULL,
    PRIMARY KEY (plan, revision)
) STRICT;

CREATE TRIGGER card_keeps_its_clinic BEFORE INSERT ON card
WHEN EXISTS (SELECT 1 FROM card WHERE plan = NEW.plan AND clinic <> NEW.clinic)
BEGIN SELECT RAISE(ABORT, 'the plan belongs to another clinic'); END;

CREATE TRIGGER card_stays_as_signed BEFORE UPDATE ON card
BEGIN SELECT RAISE(ABORT, 'a card is not changed'); END;

CREATE TABLE clinician (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    name TEXT NOT NULL UNIQUE CHECK (length(name) > 0),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE device (
    patient INTEGER NOT NULL PRIMARY KEY REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE digest (
    patient INTEGER NOT NULL PRIMARY KEY REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE draft (
    patient INTEGER NOT NULL PRIMARY KEY REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE entry (
    n INTEGER NOT NULL PRIMARY KEY CHECK (n BETWEEN 1 AND 4294967295),
    plan BLOB NOT NULL,
    at_ms INTEGER NOT NULL,
    offset_s INTEGER NOT NULL,
    payload BLOB NOT NULL
) STRICT;

CREATE INDEX entry_by_time ON entry (at_ms);

CREATE TRIGGER entry_is_not_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

CREATE TRIGGER entry_is_not_removed BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'the log is append-only'); END;

CREATE TABLE former_log (
    id BLOB NOT NULL PRIMARY KEY CHECK (length(id) > 0),
    entries INTEGER NOT NULL CHECK (entries >= 0)
) STRICT;

CREATE TRIGGER former_log_is_not_changed BEFORE UPDATE ON former_log
BEGIN SELECT RAISE(ABORT, 'a former id stays'); END;

CREATE TRIGGER former_log_is_not_removed BEFORE DELETE ON former_log
BEGIN SELECT RAISE(ABORT, 'a former id stays'); END;

CREATE TABLE issued (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    patient INTEGER NOT NULL REFERENCES patient (id) ON DELETE CASCADE,
    revision INTEGER NOT NULL CHECK (revision >= 0),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0),
    UNIQUE (patient, revision)
) STRICT;

CREATE TABLE keys (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE log (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    id BLOB NOT NULL CHECK (length(id) > 0),
    exports INTEGER NOT NULL DEFAULT 0 CHECK (exports >= 0)
) STRICT;

CREATE TRIGGER log_keeps_its_id BEFORE UPDATE ON log
WHEN NEW.exports < OLD.exports
  OR (NEW.id = OLD.id AND NEW.exports = OLD.exports)
  OR (NEW.id <> OLD.id AND NOT EXISTS (SELECT 1 FROM former_log WHERE id = OLD.id))
  OR EXISTS (SELECT 1 FROM former_log WHERE id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'a log keeps its id until that is a former one, and counts its exports upwards'); END;

CREATE TRIGGER log_stays BEFORE DELETE ON log
BEGIN SELECT RAISE(ABORT, 'a log is not removed'); END;

CREATE TABLE manifest (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE norms (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE origin (
    one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1),
    id BLOB NOT NULL CHECK (length(id) = 16),
    generation INTEGER NOT NULL CHECK (generation >= 0)
) STRICT;

CREATE TABLE own_exercise (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE patient (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE patient_case (
    patient INTEGER NOT NULL PRIMARY KEY REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE plan_set (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TABLE received (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    patient INTEGER NOT NULL REFERENCES patient (id) ON DELETE CASCADE,
    log BLOB NOT NULL,
    counter INTEGER NOT NULL CHECK (counter >= 0),
    sealed BLOB NOT NULL CHECK (length(sealed) > 0),
    UNIQUE (patient, log, counter)
) STRICT;

CREATE TABLE setting (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE visit (
    id INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
    patient INTEGER NOT NULL REFERENCES patient (id) ON DELETE CASCADE,
    sealed BLOB NOT NULL CHECK (length(sealed) > 0)
) STRICT;

CREATE TRIGGER visit_is_not_changed BEFORE UPDATE ON visit
BEGIN SELECT RAISE(ABORT, 'visits are append-only'); END;

CREATE INDEX visit_of_patient ON visit (patient);
