//! Back from the publish date: the chain, what is owed, chapters, those outside.

use benchslate_core::{
    exchange::chapters::{Fault, Misfit},
    journal::kinds::{DaysOf, DueWhat, OutsiderKind},
    measure::film_time,
    planning::publishing::leads::{Lead, LeadOf},
};

/// The row that leads here, and the head.
pub fn publishing() -> &'static str {
    "Publishing"
}

/// Beside it.
pub fn all_of_it() -> &'static str {
    "dates, what is owed, chapters"
}

/// What stands past the lower edge.
pub fn below() -> &'static str {
    "what is owed, chapters"
}

/// The keys, read aloud.
pub fn keys() -> &'static str {
    "Keys of publishing"
}

/// The one answer.
pub fn cut_by() -> &'static str {
    "The cut must go out by"
}

/// Under it, while it is still to come.
pub fn days_left(days: i64) -> String {
    match days {
        0 => "today".to_owned(),
        1 => "one day left".to_owned(),
        days => format!("{days} days left"),
    }
}

/// Under it, where it is over.
pub fn days_over(days: i64) -> String {
    if days == 1 { "one day ago".to_owned() } else { format!("{days} days ago") }
}

/// The film is out.
pub fn went_out() -> &'static str {
    "The film went out"
}

/// Without a publish date.
pub fn no_date() -> &'static str {
    "No publish date yet. With one, each thing that stands before it gets its day, counted back: upload, words under it, captions, review, the last cut."
}

/// A key.
pub fn publish_day() -> &'static str {
    "Publish date"
}

/// Under it.
pub fn and_length() -> &'static str {
    "and length of the film"
}

/// A key.
pub fn new_due() -> &'static str {
    "Owed"
}

/// Under it.
pub fn by_a_day() -> &'static str {
    "by a day"
}

/// A key.
pub fn new_chapter() -> &'static str {
    "Chapter"
}

/// Under it.
pub fn title_and_time() -> &'static str {
    "title, time"
}

/// The chain, read aloud.
pub fn the_chain() -> &'static str {
    "Back from the publish date"
}

/// A stop of the chain.
pub fn lead(lead: &Lead) -> String {
    if !lead.words.is_empty() {
        return lead.words.clone();
    }
    lead_of(lead.of).to_owned()
}

/// The same, without words of the maker's own.
pub fn lead_of(of: LeadOf) -> &'static str {
    match of {
        LeadOf::Publish => "Publish",
        LeadOf::Upload => "Upload and checks",
        LeadOf::Words => "Text, links, disclosure",
        LeadOf::Captions => "Captions",
        LeadOf::Review => "Sponsor\u{2019}s review begins",
        LeadOf::Lock => "Edit lock, cut sent",
        LeadOf::Own => "Something else",
    }
}

/// How long a stop takes.
pub fn takes(days: u32, of: DaysOf) -> String {
    let one = days == 1;
    match of {
        DaysOf::Calendar if one => "1 day".to_owned(),
        DaysOf::Calendar => format!("{days} days"),
        DaysOf::Working if one => "1 working day".to_owned(),
        DaysOf::Working => format!("{days} working days"),
        DaysOf::Theirs if one => "1 of their working days".to_owned(),
        DaysOf::Theirs => format!("{days} of their working days"),
    }
}

/// Beside a stop that what was promised has moved.
pub fn promised(what: &str) -> String {
    format!("promised: {what}")
}

/// Under the chain.
pub fn common_practice() -> &'static str {
    "Days between: common practice, until your own list takes its place."
}

/// The same.
pub fn own_list() -> &'static str {
    "Days between: your own list."
}

/// The row that leads to the list.
pub fn change_the_list() -> &'static str {
    "Change the list"
}

/// What the setting is called.
pub fn the_leads() -> &'static str {
    "days before publishing"
}

/// The edit.
pub fn edit_left() -> &'static str {
    "Edit still to come"
}

/// How it was worked out.
pub fn edit_working(
    minutes: &str,
    a_minute: &str,
    whole: &str,
    films: usize,
    worked: Option<&str>,
) -> String {
    let from = if films == 1 { "one film".to_owned() } else { format!("{films} films") };
    let less = worked.map(|worked| format!(", less {worked} worked")).unwrap_or_default();
    format!("{minutes} min at {a_minute} a minute, from {from} of your own: {whole}{less}")
}

/// No film went out yet.
pub fn edit_none_before() -> &'static str {
    "no film of your own yet"
}

/// How to come by it.
pub fn edit_none_before_how() -> &'static str {
    "Once one is out with its length, its edit hours a minute tell."
}

/// Nobody said how long.
pub fn edit_no_length() -> &'static str {
    "length not said"
}

/// Over what is owed.
pub fn owed() -> &'static str {
    "Owed"
}

/// Nothing is.
pub fn nothing_owed() -> &'static str {
    "Nothing is owed. What a sponsor or client was promised goes here, with its day: a mention, a link, a cut to look at."
}

/// Beside something owed.
pub fn by(day: Option<&str>, to: Option<&str>) -> String {
    let mut text = match day {
        Some(day) => format!("by {day}"),
        None => "no day".to_owned(),
    };
    if let Some(to) = to {
        text.push_str(", to ");
        text.push_str(to);
    }
    text
}

/// The same, where it is late.
pub fn late(by: &str) -> String {
    format!("late: {by}")
}

/// The same, where it held until a day that is past.
pub fn over(day: &str) -> String {
    format!("over, it held until {day}")
}

/// The same, where it is done.
pub fn done_on(day: &str) -> String {
    format!("done {day}")
}

/// Over the chapters.
pub fn chapters() -> &'static str {
    "Chapters"
}

/// Over shots that can be chapters.
pub fn from_the_takes() -> &'static str {
    "From the takes"
}

/// There are none.
pub fn no_chapters() -> &'static str {
    "No chapters yet. They are typed once the edit is locked: what it is called, where it begins."
}

/// Why they can't be given out.
pub fn fault(fault: Fault) -> String {
    match fault {
        Fault::None => no_chapters().to_owned(),
        Fault::Backwards { place, at } => {
            format!("Chapter {place} begins at {}, before the one above it.", film_time::shown(at))
        }
        Fault::SameTime { at, .. } => format!("Two chapters begin at {}.", film_time::shown(at)),
        Fault::BeyondEnd { at, length, .. } => format!(
            "A chapter begins at {}; the film is {} long.",
            film_time::shown(at),
            film_time::shown(length)
        ),
        Fault::NoTitle { place } => format!("Chapter {place} has no title."),
        Fault::NoLength => "The length of the film is not said: the last chapter has no end.".to_owned(),
        Fault::Overlap { place } => format!("Chapter {place} lies half in another."),
    }
}

/// Over those outside.
pub fn outside() -> &'static str {
    "Outside"
}

/// Adds one.
pub fn one_more_outside() -> &'static str {
    "A sponsor, client or shop"
}

/// Beside it.
pub fn their_days() -> &'static str {
    "their working days"
}

/// What somebody outside is to the shop.
pub fn outsider_kind(kind: OutsiderKind) -> &'static str {
    match kind {
        OutsiderKind::Sponsor => "a sponsor",
        OutsiderKind::Client => "a client",
        OutsiderKind::Shop => "another shop",
    }
}

/// What is owed.
pub fn due_what(what: DueWhat) -> &'static str {
    match what {
        DueWhat::Review => "cut for review",
        DueWhat::Mention => "mention",
        DueWhat::Link => "link",
        DueWhat::ExclusiveUntil => "nobody else\u{2019}s goods until",
        DueWhat::Other => "something else",
    }
}

/// Which days a lead counts.
pub fn days_of(of: DaysOf) -> &'static str {
    match of {
        DaysOf::Calendar => "days",
        DaysOf::Working => "working days",
        DaysOf::Theirs => "their working days",
    }
}

/// A lead of something owed, in a line.
pub fn so_many_days(days: i32, of: DaysOf, later: bool) -> String {
    let turn = if later { "after" } else { "before" };
    format!("{days} {} {turn}", days_of(of))
}

/// What a lead counts from where nothing else is chosen.
pub fn the_publish_date() -> &'static str {
    "the publish date"
}

/// By a field.
pub fn counts_from_itself() -> &'static str {
    "This would count from itself, by way of others. Choose what stands before it."
}

/// By a field.
pub fn how_many_days() -> &'static str {
    "How many days after it? Type a whole number, as 30."
}

/// By a field: why a chapter can't begin there.
pub fn misfit(misfit: &Misfit) -> String {
    let turned = "Tap again if the film shows them the other way round.";
    match misfit {
        Misfit::SameTime { title } => format!("{title} begins there. Two can\u{2019}t begin at one time."),
        Misfit::BeyondEnd { length } => format!(
            "The film is {} long, and a chapter begins before its end. If it is longer by now, its length comes first.",
            film_time::shown(*length)
        ),
        Misfit::BeforeEarlier { title, at } => {
            format!("{title}, taken earlier, begins at {}. {turned}", film_time::shown(*at))
        }
        Misfit::AfterLater { title, at } => {
            format!("{title}, taken later, begins at {}. {turned}", film_time::shown(*at))
        }
    }
}

/// Over the days of a working week.
pub fn working_week() -> &'static str {
    "Working week"
}

/// By them.
pub fn no_day_of_the_week() -> &'static str {
    "Tap the days on which they work: without one, nothing comes back."
}

/// Over the days off.
pub const fn days_off() -> &'static str {
    "Days off"
}

/// Adds one.
pub const fn one_more_day_off() -> &'static str {
    "One more day off"
}

/// A day of the week on a narrow key, 1 Monday to 7 Sunday.
pub fn short_weekday(day: u8) -> &'static str {
    match day {
        1 => "Mo",
        2 => "Tu",
        3 => "We",
        4 => "Th",
        5 => "Fr",
        6 => "Sa",
        _ => "Su",
    }
}

/// A mark.
pub fn marked_done(what: &str, done: bool) -> String {
    if done { format!("{what} is done") } else { format!("{what} is not done yet") }
}
