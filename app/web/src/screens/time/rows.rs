//! The time sheet in plain words. All hours are core's; shares are for drawing only.

use crate::{
    parts::{
        hatch::Hatch,
        time_bar::{TimePiece, TimeRow, TimeText},
    },
    screens::{journal::facts, shop::week_start},
    shell::{Place, Tab, desk::View},
    words::{common, time as words},
};
use benchslate_core::{
    costing::{Books, Path, Rule},
    journal::{
        Id,
        kinds::{Bearer, Side},
        shop::Time as When,
    },
    measure::{Quantity, Seconds, Weekday, minutes},
    timing::{
        breakdown::{Breakdown, Of, Row, breakdown},
        earlier::{self, Middle},
    },
};

/// How the hours are cut.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Cut {
    Stage,
    Person,
    Day,
    Camera,
}

impl Cut {
    /// By its place in the set.
    pub fn at(at: usize) -> Cut {
        [Cut::Stage, Cut::Person, Cut::Day, Cut::Camera].get(at).copied().unwrap_or(Cut::Stage)
    }
}

/// The sheet.
#[derive(Clone, PartialEq)]
pub struct Time {
    pub title: String,
    pub empty: bool,
    pub runs: bool,
    pub bar: TimeText,
    pub notes: Vec<String>,
    pub groups: Vec<Group>,
    /// Rows under a rule.
    pub ratios: Vec<Ratio>,
    /// Where all of it stands on one line.
    pub line: Option<String>,
}

/// A figure beside the hours, with its working and where it opens.
#[derive(Clone, PartialEq)]
pub struct Ratio {
    pub label: &'static str,
    pub working: String,
    pub figure: String,
    pub href: Option<String>,
}

/// Rows under one head.
#[derive(Clone, PartialEq)]
pub struct Group {
    pub label: String,
    pub figure: String,
    pub kind: Option<Hatch>,
    pub rows: Vec<TimeRow>,
}

/// None: there is no such build.
pub fn look(books: &Books, view: &View, build: Id, cut: Cut) -> Option<Time> {
    let title = view.shop.builds.get(&build)?.title.clone();
    let day = usize::from(week_start(view)).saturating_sub(1);
    let week = Weekday::ALL.get(day).copied().unwrap_or(Weekday::Monday);
    let hours = breakdown(view.shop, Bearer::Build(build), books.as_of, week);
    let say = Say { view };
    let rows = match cut {
        Cut::Stage => &hours.by_stage,
        Cut::Person => &hours.by_person,
        Cut::Day => &hours.by_day,
        Cut::Camera => &hours.on_camera,
    };
    let most = rows.iter().flat_map(|group| &group.rows).map(|row| row.worked.0).max().unwrap_or(0);
    Some(Time {
        title,
        empty: hours.worked.is_zero(),
        runs: hours.runs,
        bar: say.bar(&hours),
        notes: say.notes(&hours, cut),
        groups: rows.iter().map(|row| say.group(row, most)).collect(),
        ratios: say.ratios(books, &hours, build),
        line: Some(Place::Line(build).href()),
    })
}

/// For the drawing only: 0 to 1.
fn share(part: Seconds, whole: i64) -> f64 {
    if whole > 0 { part.0 as f64 / whole as f64 } else { 0.0 }
}

fn hatch(side: Side) -> Hatch {
    match side {
        Side::Piece => Hatch::Piece,
        Side::Film => Hatch::Film,
        Side::Both => Hatch::Both,
    }
}

struct Say<'a> {
    view: &'a View<'a>,
}

impl Say<'_> {
    fn hours(&self, hours: Seconds) -> String {
        self.view.tongue.hours(hours)
    }

    fn bar(&self, hours: &Breakdown) -> TimeText {
        let piece = |row: &Row| {
            let Of::Side(side) = row.of else { return None };
            let text = words::side_hours(common::side(side), &self.hours(row.shown));
            Some(TimePiece { share: share(row.worked, hours.worked.0), kind: hatch(side), text })
        };
        // Both stands between the two that it is for.
        let mut pieces: Vec<TimePiece> = hours.by_stage.iter().filter_map(piece).collect();
        if let [_, film, both] = pieces.as_mut_slice() {
            std::mem::swap(film, both);
        }
        let wall = (!hours.wall.is_zero()).then(|| {
            (share(hours.wall, hours.worked.0), words::on_the_wall(&self.hours(minutes::alone(hours.wall))))
        });
        TimeText { whole: words::person_hours(&self.hours(hours.shown)), pieces, wall }
    }

    fn notes(&self, hours: &Breakdown, cut: Cut) -> Vec<String> {
        let mut notes = Vec::new();
        if hours.wall.is_zero() {
            notes.push(words::only_amounts().to_owned());
        } else if !hours.as_amount.is_zero() {
            notes.push(words::amounts_apart(&self.hours(minutes::alone(hours.as_amount))));
        }
        if hours.overlaps {
            notes.push(words::overlaps(&self.hours(minutes::alone(hours.overlapped))));
        }
        if cut == Cut::Camera && hours.rolling.is_zero() {
            notes.push(words::never_rolled().to_owned());
        }
        notes
    }

    fn group(&self, group: &Row, most: i64) -> Group {
        let side = match group.of {
            Of::Side(side) => Some(side),
            _ => None,
        };
        let row = |row: &Row| TimeRow {
            label: self.name(row.of),
            figure: self.hours(row.shown),
            share: share(row.worked, most),
            kind: side.map_or(Hatch::Labour, hatch),
            entries: row.rows.iter().map(|entry| self.entry(row.of, entry)).collect(),
        };
        Group {
            label: self.head(group.of),
            figure: self.hours(group.shown),
            kind: side.map(hatch),
            rows: group.rows.iter().map(row).collect(),
        }
    }

    fn head(&self, of: Of) -> String {
        match of {
            Of::Side(side) => words::side(common::side(side)),
            Of::Week(day) => words::week(&self.view.tongue.day(day)),
            Of::Stage(_) | Of::Person(_) | Of::Day(_) | Of::Entry(_) => self.name(of),
        }
    }

    fn name(&self, of: Of) -> String {
        match of {
            Of::Side(side) => common::side(side).to_owned(),
            Of::Stage(id) => facts::stage(self.view, id),
            Of::Person(id) => facts::person(self.view, id),
            Of::Week(day) | Of::Day(day) => self.view.tongue.day(day),
            Of::Entry(_) => String::new(),
        }
    }

    /// What the row does not say already: its day and who, or its stage and who.
    fn entry(&self, under: Of, row: &Row) -> (String, String, String) {
        let Of::Entry(entry) = row.of else { return Default::default() };
        let stretch = self.view.shop.stretches.iter().find(|it| it.entry() == entry);
        let text = stretch.map(|it| {
            let who = facts::person(self.view, it.person);
            let text = match under {
                Of::Day(_) => words::stage_and_who(&facts::stage(self.view, it.stage), &who),
                _ => words::entry(&self.view.tongue.day(it.order.day), &who),
            };
            let how = match it.time {
                When::Amount(_) => words::as_amount(),
                When::Span(_) if it.runs() => words::still_runs(),
                When::Span(_) => "",
            };
            crate::words::journal::comma(&text, how)
        });
        (text.unwrap_or_default(), self.hours(row.shown), Place::Entry(entry).href())
    }

    /// What the middle of earlier builds is, after the working.
    fn earlier(&self, working: String, middle: Middle, say: fn(&Self, Quantity) -> String) -> String {
        let said = middle.map(|(value, many)| words::earlier_builds(&say(self, value), many));
        let said = said.unwrap_or_default();
        if working.is_empty() { said } else { crate::words::journal::comma(&working, &said) }
    }

    fn plain(&self, value: Quantity) -> String {
        self.view.tongue.quantity(value)
    }

    fn in_hours(&self, hours: Quantity) -> String {
        self.hours(minutes::alone(hours.as_hours()))
    }

    fn in_minutes(&self, hours: Quantity) -> String {
        let (minutes, seconds) = hours.as_hours().minutes_seconds();
        words::minutes_seconds(minutes, seconds)
    }

    fn ratios(&self, books: &Books, hours: &Breakdown, build: Id) -> Vec<Ratio> {
        let mut rows = Vec::new();
        let beside = earlier::beside(self.view.shop, build, books.as_of);
        if let Some(an_item) = beside.own.an_item.filter(|_| beside.an_item.is_some()) {
            let working = self.earlier(String::new(), beside.an_item, Self::in_hours);
            rows.push(Ratio {
                label: words::piece_an_item(),
                working,
                figure: self.in_hours(an_item),
                href: None,
            });
        }
        if let Some(ratio) = hours.film_an_hour {
            let of = |side: Side| {
                let row = hours.by_stage.iter().find(|row| row.of == Of::Side(side));
                self.hours(row.map_or(Seconds::ZERO, |row| row.shown))
            };
            let working = words::divided(&of(Side::Film), &of(Side::Piece));
            let working = self.earlier(working, beside.film_an_hour, Self::plain);
            let figure = self.view.tongue.quantity(ratio);
            rows.push(Ratio { label: words::film_an_hour(), working, figure, href: None });
        }
        if let Some(film) = hours.per_minute {
            let href = Some(Place::Build(build, Tab::Film).href());
            let finished = self.view.tongue.quantity(film.finished);
            if !film.edited.is_zero() {
                let (minutes, seconds) = film.edit.minutes_seconds();
                rows.push(Ratio {
                    label: words::edit_a_minute(),
                    working: self.earlier(
                        words::by_minutes(&self.hours(minutes::alone(film.edited)), &finished),
                        beside.edit_a_minute,
                        Self::in_minutes,
                    ),
                    figure: words::minutes_seconds(minutes, seconds),
                    href: href.clone(),
                });
            }
            if let Some(footage) = film.footage {
                let label = words::footage_a_minute();
                let working = self.earlier(String::new(), beside.footage_a_minute, Self::plain);
                rows.push(Ratio { label, working, figure: self.view.tongue.quantity(footage), href });
            }
        }
        if !hours.rolling.is_zero() {
            let rolling = self.hours(minutes::alone(hours.rolling));
            let working = words::while_working().to_owned();
            rows.push(Ratio { label: words::camera_rolling(), working, figure: rolling, href: None });
        }
        let own = books.build_cost(build).own_hours;
        let timber = own.part(|rule| matches!(rule, Rule::InTheTimber));
        if let Some((timber, held)) =
            timber.and_then(|it| Some((it, it.hours()?))).filter(|it| !it.1.is_zero())
        {
            let path = Path { steps: vec![own.rule.step(), timber.rule.step()] };
            let href = Place::Opened(build, path.to_string()).href();
            let figure = self.hours(held.seconds());
            let working = words::in_the_timber_why().to_owned();
            rows.push(Ratio { label: words::in_the_timber(), working, figure, href: Some(href) });
        }
        rows
    }
}
