//! `carryover example`.

use crate::Done;
use crate::args::Example;
use crate::out::Out;
use actions::Clock;
use chrono::Duration;
use serde_json::json;

/// Length of the example plan, in days: six weeks.
const PLAN_DAYS: i64 = 42;

pub fn run(what: &Example, clock: &Clock, out: &mut Out) -> Done {
    let moment = clock.moment();
    let text = match what {
        Example::Plan => format::plan_file::example(moment.now.date() + Duration::days(PLAN_DAYS)),
        Example::Norms => format::norms_file::EXAMPLE.to_owned(),
        Example::Diary { start } => format::diary_file::example(*start),
        Example::Exercise => format::catalogue::OWN_EXAMPLE.to_owned(),
        Example::Runs { start } => {
            let noon = start.and_hms_opt(12, 0, 0).unwrap_or_default().and_utc().timestamp();
            let offset = chrono::FixedOffset::east_opt(moment.zone.at(noon)).map(|offset| offset.to_string());
            format::runs_file::example(*start, &offset.unwrap_or_else(|| "+00:00".into()))
        }
    };
    if out.json() {
        out.say(|_| String::new(), || json!({ "example": text }));
    } else {
        out.print(&text);
    }
    Ok(true)
}
