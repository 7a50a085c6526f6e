//! Dates and numbers as people read them.

use crate::Words;
use chrono::{Datelike, NaiveDate};
use exercises::catalogue::Lang;

const EN: [&str; 12] = [
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
];
const ES: [&str; 12] = [
    "enero",
    "febrero",
    "marzo",
    "abril",
    "mayo",
    "junio",
    "julio",
    "agosto",
    "septiembre",
    "octubre",
    "noviembre",
    "diciembre",
];

impl Words {
    /// "28 October".
    pub fn date(self, day: NaiveDate) -> String {
        match self.lang {
            Lang::En => format!("{} {}", day.day(), self.month(day)),
            Lang::Es => format!("{} de {}", day.day(), self.month(day)),
        }
    }

    /// "28 October 2026".
    pub fn date_in_full(self, day: NaiveDate) -> String {
        match self.lang {
            Lang::En => format!("{} {}", self.date(day), day.year()),
            Lang::Es => format!("{} de {}", self.date(day), day.year()),
        }
    }

    /// "28 Oct", for a chart's axis.
    pub fn date_short(self, day: NaiveDate) -> String {
        format!("{} {}", day.day(), self.month(day).chars().take(3).collect::<String>())
    }

    /// "5.5", with the language's own mark and without a needless zero.
    pub fn number(self, value: f64) -> String {
        let text = format!("{value:.1}");
        let text = text.strip_suffix(".0").unwrap_or(&text);
        match self.lang {
            Lang::En => text.to_owned(),
            Lang::Es => text.replace('.', ","),
        }
    }

    fn month(self, day: NaiveDate) -> &'static str {
        let names = match self.lang {
            Lang::En => &EN,
            Lang::Es => &ES,
        };
        self.as_shown(names[day.month0() as usize])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn dates_read_as_in_the_language() {
        let day = NaiveDate::from_ymd_opt(2026, 10, 8).expect("a date");
        let (en, es) = (Words::new(Lang::En), Words::new(Lang::Es));
        assert_eq!((en.date(day), es.date(day)), ("8 October".into(), "8 de octubre".into()));
        assert_eq!(es.date_in_full(day), "8 de octubre de 2026");
        assert_eq!((en.date_short(day), es.date_short(day)), ("8 Oct".into(), "8 oct".into()));
    }

    #[test]
    fn numbers_have_one_decimal_at_most() {
        let (en, es) = (Words::new(Lang::En), Words::new(Lang::Es));
        assert_eq!((en.number(5.5), en.number(5.0), en.number(12.34)), ("5.5".into(), "5".into(), "12.3".into()));
        assert_eq!(es.number(5.5), "5,5");
    }
}
