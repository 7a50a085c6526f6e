//! Dates, times of day, numbers and lists, as the locale writes them.

use crate::{Key, Number, Words};
use chrono::{Datelike, NaiveDate, Weekday};

const MONTHS: [(Key, Key); 12] = [
    (Key::MonthJanuary, Key::MonthShortJanuary),
    (Key::MonthFebruary, Key::MonthShortFebruary),
    (Key::MonthMarch, Key::MonthShortMarch),
    (Key::MonthApril, Key::MonthShortApril),
    (Key::MonthMay, Key::MonthShortMay),
    (Key::MonthJune, Key::MonthShortJune),
    (Key::MonthJuly, Key::MonthShortJuly),
    (Key::MonthAugust, Key::MonthShortAugust),
    (Key::MonthSeptember, Key::MonthShortSeptember),
    (Key::MonthOctober, Key::MonthShortOctober),
    (Key::MonthNovember, Key::MonthShortNovember),
    (Key::MonthDecember, Key::MonthShortDecember),
];

/// Full and short names, beginning with Monday.
const WEEKDAYS: [(Key, Key); 7] = [
    (Key::Monday, Key::MondayShort),
    (Key::Tuesday, Key::TuesdayShort),
    (Key::Wednesday, Key::WednesdayShort),
    (Key::Thursday, Key::ThursdayShort),
    (Key::Friday, Key::FridayShort),
    (Key::Saturday, Key::SaturdayShort),
    (Key::Sunday, Key::SundayShort),
];

impl Words {
    /// "28 October".
    pub fn date(self, day: NaiveDate) -> String {
        self.date_day_month(day.day(), self.text(month(day).0))
    }

    /// "28 October 2026".
    pub fn date_in_full(self, day: NaiveDate) -> String {
        self.date_day_month_year(day.day(), self.text(month(day).0), &day.year().to_string())
    }

    /// "28 Oct", for a chart's axis.
    pub fn date_short(self, day: NaiveDate) -> String {
        self.date_day_month_short(day.day(), self.text(month(day).1))
    }

    /// "Wednesday 28 October", on its own.
    pub fn weekday_date(self, day: NaiveDate) -> String {
        upper(&self.date_weekday(self.text(weekday(day)), &self.date(day)))
    }

    /// The same within a sentence, where Spanish has a small first letter and no comma.
    pub fn weekday_date_inline(self, day: NaiveDate) -> String {
        self.date_weekday_inline(self.text(weekday(day)), &self.date(day))
    }

    /// "Wednesday".
    pub fn weekday(self, day: NaiveDate) -> String {
        upper(self.text(weekday(day)))
    }

    /// "09:00", "9:00 AM"; minutes beyond midnight wrap around.
    pub fn minute(self, minute: u16) -> String {
        let (hour, minute) = (minute / 60 % 24, format!("{:02}", minute % 60));
        if !self.has_12_hours() {
            return self.time_24(&format!("{hour:02}"), &minute);
        }
        let shown = self.hour_shown(hour).to_string();
        if hour < 12 { self.time_am(&shown, &minute) } else { self.time_pm(&shown, &minute) }
    }

    /// A time within a sentence, with an article if the language uses one: "las 09:00".
    pub fn minute_inline(self, minute: u16) -> String {
        self.time_with_article(&self.minute(minute), self.hour_shown(minute / 60 % 24))
    }

    /// A number that is shown as "5.5", with the locale's decimal mark and without a decimal that is zero.
    pub fn number(self, value: f64) -> Number {
        Number::rounded(value, 1)
    }

    /// "a, b and c"; empty for an empty list.
    pub fn list(self, all: &[String]) -> String {
        match all {
            [] => String::new(),
            [one] => one.clone(),
            [first, second] => self.list_and_two(first, second),
            [before @ .., last] => self.list_and_last(&self.commas(before), last),
        }
    }

    /// "a, b, c".
    pub fn commas<T: AsRef<str>>(self, all: &[T]) -> String {
        let mut all = all.iter().map(AsRef::as_ref);
        let first = all.next().unwrap_or_default().to_owned();
        all.fold(first, |before, next| self.list_comma(&before, next))
    }

    /// "a; b; c", for parts that may contain commas themselves.
    pub fn semicolons<T: AsRef<str>>(self, all: &[T]) -> String {
        let mut all = all.iter().map(AsRef::as_ref);
        let first = all.next().unwrap_or_default().to_owned();
        all.fold(first, |before, next| self.list_semicolon(&before, next))
    }

    /// Whole sentences, one after the other.
    pub fn sentences<T: AsRef<str>>(self, all: &[T]) -> String {
        let mut all = all.iter().map(AsRef::as_ref);
        let first = all.next().unwrap_or_default().to_owned();
        all.fold(first, |before, next| self.two_sentences(&before, next))
    }

    fn has_12_hours(self) -> bool {
        self.plain(Key::LocaleClock) == "12"
    }

    /// The hour as the locale's clock shows it: 0 to 23, or 12 and 1 to 11.
    fn hour_shown(self, hour: u16) -> u16 {
        if self.has_12_hours() { (hour + 11) % 12 + 1 } else { hour }
    }
}

fn month(day: NaiveDate) -> (Key, Key) {
    MONTHS[day.month0() as usize]
}

fn weekday(day: NaiveDate) -> Key {
    names_of(day.weekday()).0
}

/// A weekday's full and short name.
pub(crate) fn names_of(day: Weekday) -> (Key, Key) {
    WEEKDAYS[day.num_days_from_monday() as usize]
}

/// The text with its first letter in upper case, for the beginning of a line.
pub fn upper(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::Locale;

    /// Patterns of CLDR 48 (common/main/*.xml: dates/calendars/gregorian, numbers/symbols-latn): `MMMMEEEEd`, `MMMMd`, `long`,
    /// the clock of the region (supplementalData, timeData) with `Hm` or `hm`, and `decimal`. Months and weekdays are those of
    /// `months/format/wide` and `days/format/wide`.
    struct Cldr {
        locale: Locale,
        weekday_month_day: &'static str,
        month_day: &'static str,
        long: &'static str,
        time: &'static str,
        decimal: &'static str,
    }

    const ENGLISH: Cldr = Cldr {
        locale: Locale::EnGb,
        weekday_month_day: "EEEE d MMMM",
        month_day: "d MMMM",
        long: "d MMMM y",
        time: "HH:mm",
        decimal: ".",
    };

    const SPANISH: Cldr = Cldr {
        locale: Locale::Es,
        weekday_month_day: "EEEE, d 'de' MMMM",
        month_day: "d 'de' MMMM",
        long: "d 'de' MMMM 'de' y",
        time: "HH:mm",
        decimal: ",",
    };

    const CLDR: [Cldr; 6] = [
        // English without a region is written as in Britain.
        Cldr { locale: Locale::En, ..ENGLISH },
        ENGLISH,
        Cldr {
            locale: Locale::EnUs,
            weekday_month_day: "EEEE, MMMM d",
            month_day: "MMMM d",
            long: "MMMM d, y",
            time: "h:mm\u{a0}a",
            decimal: ".",
        },
        SPANISH,
        Cldr { locale: Locale::EsEs, ..SPANISH },
        Cldr { locale: Locale::EsMx, time: "h:mm\u{a0}a", decimal: ".", ..SPANISH },
    ];

    /// Replaces the fields of a pattern, the longest first; quoted letters stay as they are.
    fn filled(pattern: &str, fields: &[(&str, &str)]) -> String {
        let parts = pattern.split('\'').enumerate().map(|(part, text)| match part % 2 {
            1 => text.to_owned(),
            _ => text.split_inclusive([' ', ',', ':', '\u{a0}']).map(|piece| field(piece, fields)).collect(),
        });
        parts.collect()
    }

    fn field(piece: &str, fields: &[(&str, &str)]) -> String {
        let name = piece.trim_end_matches([' ', ',', ':', '\u{a0}']);
        let value = fields.iter().find(|(field, _)| *field == name).map_or(name, |(_, value)| value);
        piece.replace(name, value)
    }

    #[test]
    fn dates_times_and_numbers_are_those_of_cldr() {
        let monday = NaiveDate::from_ymd_opt(2026, 3, 2).expect("a date");
        for cldr in CLDR {
            let (week, month, am, pm) = match cldr.locale {
                Locale::En | Locale::EnGb | Locale::EnUs => ("Monday", "March", "AM", "PM"),
                Locale::Es | Locale::EsEs | Locale::EsMx => ("lunes", "marzo", "a.m.", "p.m."),
            };
            let words = Words::new(cldr.locale);
            let date = |pattern| filled(pattern, &[("EEEE", week), ("d", "2"), ("MMMM", month), ("y", "2026")]);
            assert_eq!(words.weekday_date(monday), upper(&date(cldr.weekday_month_day)), "{}", cldr.locale.tag());
            assert_eq!(words.date(monday), date(cldr.month_day), "{}", cldr.locale.tag());
            assert_eq!(words.date_in_full(monday), date(cldr.long), "{}", cldr.locale.tag());
            let time = |h, hh, a| filled(cldr.time, &[("HH", hh), ("h", h), ("mm", "05"), ("a", a)]);
            for (minute, expected) in [
                (5, time("12", "00", am)),
                (9 * 60 + 5, time("9", "09", am)),
                (12 * 60 + 5, time("12", "12", pm)),
                (13 * 60 + 5, time("1", "13", pm)),
                (33 * 60 + 5, time("9", "09", am)),
            ] {
                assert_eq!(words.minute(minute), expected, "{}", cldr.locale.tag());
            }
            assert_eq!(words.shown(words.number(-3.52)), format!("-3{}5", cldr.decimal));
        }
    }

    #[test]
    fn a_date_within_a_sentence_and_on_an_axis() {
        let day = NaiveDate::from_ymd_opt(2026, 10, 8).expect("a date");
        let (en, us, es) = (Words::new(Locale::En), Words::new(Locale::EnUs), Words::new(Locale::Es));
        assert_eq!(
            (en.date_short(day), us.date_short(day), es.date_short(day)),
            ("8 Oct".into(), "Oct 8".into(), "8 oct".into())
        );
        assert_eq!(en.weekday_date_inline(day), "Thursday 8 October");
        assert_eq!(es.weekday_date_inline(day), "jueves 8 de octubre");
    }

    #[test]
    fn a_time_within_a_sentence_has_its_article() {
        let (en, es, mexico) = (Words::new(Locale::En), Words::new(Locale::Es), Words::new(Locale::EsMx));
        assert_eq!(en.minute_inline(540), "09:00");
        assert_eq!((es.minute_inline(540), es.minute_inline(60)), ("las 09:00".into(), "la 01:00".into()));
        assert_eq!(mexico.minute_inline(13 * 60), "la 1:00\u{a0}p.m.");
    }

    #[test]
    fn numbers_have_one_decimal_at_most() {
        let (en, es) = (Words::new(Locale::En), Words::new(Locale::Es));
        let shown = [5.5, 5.0, 12.34].map(|value| en.shown(en.number(value)));
        assert_eq!(shown, ["5.5", "5", "12.3"]);
        assert_eq!(es.shown(es.number(5.5)), "5,5");
    }

    #[test]
    fn lists_end_as_usual_in_the_locale() {
        let three = ["a", "b", "c"].map(String::from);
        let listed = |locale| Words::new(locale).list(&three);
        assert_eq!([Locale::En, Locale::EnUs, Locale::Es].map(listed), ["a, b and c", "a, b, and c", "a, b y c"]);
        assert_eq!(Words::new(Locale::En).list(&three[..1]), "a");
        assert_eq!(Words::new(Locale::En).list(&three[1..]), "b and c");
        assert_eq!(Words::new(Locale::En).semicolons(&three), "a; b; c");
    }
}
