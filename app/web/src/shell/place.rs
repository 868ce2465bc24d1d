//! Places and their addresses: `?at=bench`, `?at=build.<id>.cost`. One document, any sub-folder, any host.
//!
//! Pure: a place becomes text and back, and text that is no place is the bench.

use benchslate_core::journal::{Id, Kind};

/// A build's own sheets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Tab {
    /// What happened, newest first.
    Journal,
    /// What it cost.
    Cost,
    /// Spent, used up, and the bridge between them.
    Spent,
    /// Where the hours went.
    Time,
    /// The film of it.
    Film,
}

/// How a build's figures leave the phone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// As cards that are laid over its film.
    Cards,
    /// On one page of paper.
    Print,
    /// As what goes under its film.
    Pack,
    /// Before it does: when its film goes out, and how long it becomes.
    GoesOut,
}

/// Everything that has an address.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Place {
    /// What is going on now.
    Bench,
    /// All stages, to start or to change over to.
    Stages,
    /// A stage of the maker's own.
    NewStage,
    /// Builds, lots and the shop: what the bench works for.
    WorkFor,
    /// When the running or the last stretch began and ended, typed.
    Minute(Id),
    /// How long a glue-up or a coat dries, typed; of which stretch.
    Drying(Id),
    /// All builds.
    Builds,
    /// A new build.
    NewBuild,
    /// A build, on one of its sheets.
    Build(Id, Tab),
    /// A figure of a build, opened; the path is `costing`'s.
    Opened(Id, String),
    /// What the salvage of a build saved.
    Saving(Id),
    /// An entry with its history: correct, strike out, bring back.
    Entry(Id),
    /// Hours afterwards.
    Hours,
    /// A note; without a home at first.
    Note,
    /// What has no home yet.
    Homeless,
    /// What was paid at a till; none: a new one, its lines later.
    Receipt(Option<Id>),
    /// A lot that is a line of a receipt.
    LineLot(Id),
    /// Money paid directly that is a line of a receipt.
    LineExpense(Id),
    /// What a lot or a build yielded beside what it was for.
    ByProduct,
    /// Money paid directly.
    Expense,
    /// What is on the shelf.
    Stock,
    /// A new lot.
    NewLot,
    /// A lot: board and saving.
    Lot(Id),
    /// What all salvage saved, by source and by species.
    Across,
    /// Timber that is looked at before it is taken home.
    NewFind,
    /// A find that was kept.
    Find(Id),
    /// The yield chain of a salvaged lot.
    Chain(Id),
    /// What happened on a lot, newest first.
    LotJournal(Id),
    /// What happened for the shop as a whole, newest first.
    ShopJournal,
    /// An item that is another one.
    Same(Id),
    /// What a salvaged lot yielded.
    Sort(Id),
    /// Use stock; of which lot or item, where that is chosen.
    Use(Option<Id>),
    /// Stock that comes back from a draw.
    Return(Id),
    /// Have I got the time?
    Plan,
    /// By which formula stock is drawn, and what a change would come to.
    Formula,
    /// What is counted on the shelf, item by item.
    Count,
    /// What the shop lost of its stock.
    Losses,
    /// What lay on the shelf at the end of a day.
    OnTheShelf,
    /// What is to be bought.
    Buying,
    /// People, rates, backup.
    Shop,
    /// A person; none: a new one.
    Person(Option<Id>),
    /// Free hours of a person: the week, days off, more time.
    Free(Id),
    /// Shop-wide choices: currency, units, week, rates.
    Choices,
    /// All cautions, or those of a lot or item.
    Cautions(Option<Id>),
    /// What is not offered any more.
    PutAway,
    /// A journal brought in from a file.
    BringIn,
    /// The sample shop: into it, and out again.
    Sample,
    /// A new entry of a kind, about a tool, build or lot where one is named.
    Add(Kind, Option<Id>),
    /// What came in for a build, what was made and what left.
    Money(Id),
    /// What is still to be done for a build.
    Steps(Id),
    /// The same, of one build.
    PlanOf(Id),
    /// How long a step takes.
    HowLong(Id),
    /// What was planned for a build beside what became of it.
    Against(Id),
    /// Another rate, price, number of pieces: what then.
    WhatIf(Id),
    /// What to ask for a piece.
    Price(Id),
    /// The money of a year.
    Year,
    /// Two builds compared.
    SideBySide,
    /// The parts list of a build.
    Parts(Id),
    /// Boards that its parts are cut from.
    Cuts(Id),
    /// Resin for a void, of two parts; the first of them.
    Mix(Id),
    /// How a part moves with its moisture.
    Movement(Id),
    /// All tools.
    Tools,
    /// A tool: wear, its rate, what it has carried.
    Tool(Id),
    /// How long a tool will still last, thought anew.
    ToolLife(Id),
    /// What the shop costs every month, and what hours bear of it.
    Months,
    /// A shot, held before the camera.
    Slate(Id),
    /// A take: its clip, and whether it is a keeper.
    Take(Id),
    /// What filming a build costs.
    Filming(Id),
    /// A build on one line of time.
    Line(Id),
    /// Tables for a spreadsheet, of one build where it is named.
    Files(Option<Id>),
    /// Back from the publish date of a build, and what is owed.
    Publishing(Id),
    /// What stands before a publish date, and for how many days.
    Leads,
    /// A build's figures on their way to others.
    Out(Id, Way),
}

/// Before the kind of a new entry.
const ADD: &str = "add.";
/// The one journal that is of no entry.
const SHOP_JOURNAL: &str = "journal.shop";

/// Words of addresses, written once for both ways.
macro_rules! words {
    (
        alone { $($alone:ident $alone_word:literal,)* }
        of_one { $($one:ident $one_word:literal,)* }
        either { $($either:ident $either_word:literal,)* }
    ) => {
        impl Place {
            /// The word of a place, and what it is of; none where it takes more than that.
            fn word(&self) -> Option<(&'static str, Option<Id>)> {
                Some(match self {
                    $(Place::$alone => ($alone_word, None),)*
                    $(Place::$one(id) => ($one_word, Some(*id)),)*
                    $(Place::$either(of) => ($either_word, *of),)*
                    // Each of these is spelled out in `at` and `read`; a new place is asked for here by the compiler.
                    Place::Build(..) | Place::Opened(..) | Place::Out(..) | Place::Add(..) | Place::ShopJournal => {
                        return None;
                    }
                })
            }

            fn of_word(word: &str, of: Option<Id>) -> Option<Place> {
                Some(match (word, of) {
                    $(($alone_word, None) => Place::$alone,)*
                    $(($one_word, Some(id)) => Place::$one(id),)*
                    $(($either_word, of) => Place::$either(of),)*
                    _ => return None,
                })
            }
        }
    };
}

words! {
    alone {
        Bench "bench",
        Stages "stages",
        NewStage "new-stage",
        WorkFor "work-for",
        Builds "builds",
        NewBuild "new-build",
        Hours "hours",
        Note "note",
        Homeless "no-home-yet",
        ByProduct "by-product",
        Expense "expense",
        Stock "stock",
        NewLot "new-lot",
        Across "salvage",
        NewFind "find",
        Plan "plan",
        Formula "stock-formula",
        Count "count",
        Losses "stock-losses",
        OnTheShelf "on-the-shelf",
        Buying "buying",
        Shop "shop",
        Choices "choices",
        PutAway "put-away",
        BringIn "bring-in",
        Sample "sample",
        Year "year",
        SideBySide "side-by-side",
        Tools "tools",
        Leads "publish-leads",
        Months "months",
    }
    of_one {
        Minute "minute",
        Drying "drying",
        Saving "saving",
        Entry "entry",
        LineLot "line-lot",
        LineExpense "line-expense",
        Lot "lot",
        Find "find",
        Chain "chain",
        LotJournal "journal",
        Same "same",
        Sort "sort",
        Return "return",
        Money "money",
        Steps "steps",
        HowLong "how-long",
        PlanOf "plan-of",
        Free "free-hours",
        Against "against",
        WhatIf "what-if",
        Price "price",
        Parts "parts",
        Cuts "cuts",
        Mix "mix",
        Movement "movement",
        Tool "tool",
        ToolLife "tool-life",
        Slate "slate",
        Take "take",
        Filming "filming",
        Publishing "publishing",
        Line "time-line",
    }
    either {
        Cautions "cautions",
        Files "files",
        Person "person",
        Receipt "receipt",
        Use "use",
    }
}

impl Place {
    /// The value of `at`.
    pub fn at(&self) -> String {
        match (self, self.word()) {
            (_, Some((word, None))) => word.to_owned(),
            (_, Some((word, Some(id)))) => of_id(word, id),
            (Place::Build(id, tab), None) => format!("{}.{}", of_id("build", *id), tab.code()),
            (Place::Opened(id, path), None) => format!("{}.{path}", of_id("opened", *id)),
            (Place::Out(id, way), None) => of_id(way.code(), *id),
            (Place::Add(kind, None), None) => format!("{ADD}{}", kind.code()),
            (Place::Add(kind, Some(of)), None) => format!("{ADD}{}.{of}", kind.code()),
            (_, None) => SHOP_JOURNAL.to_owned(),
        }
    }

    /// As a link on any page of the program.
    pub fn href(&self) -> String {
        format!("./?at={}", self.at())
    }

    /// The place of an address; what is no place is the bench.
    pub fn of(at: &str) -> Place {
        Place::read(at).unwrap_or(Place::Bench)
    }

    fn read(at: &str) -> Option<Place> {
        if at == SHOP_JOURNAL {
            return Some(Place::ShopJournal);
        }
        if let Some(new) = at.strip_prefix(ADD) {
            return match new.split_once('.') {
                Some((kind, of)) => Some(Place::Add(Kind::from_code(kind)?, Some(Id::parse(of)?))),
                None => Some(Place::Add(Kind::from_code(new)?, None)),
            };
        }
        let mut words = at.splitn(3, '.');
        let (word, id, rest) = (words.next()?, words.next(), words.next());
        let id = id.map(|id| Id::parse(id).ok_or(())).transpose().ok()?;
        match (word, id, rest) {
            ("build", Some(id), Some(tab)) => Some(Place::Build(id, Tab::of(tab)?)),
            ("opened", Some(id), Some(path)) => Some(Place::Opened(id, path.to_owned())),
            ("cards", Some(id), None) => Some(Place::Out(id, Way::Cards)),
            ("print", Some(id), None) => Some(Place::Out(id, Way::Print)),
            ("pack", Some(id), None) => Some(Place::Out(id, Way::Pack)),
            ("goes-out", Some(id), None) => Some(Place::Out(id, Way::GoesOut)),
            (word, id, None) => Place::of_word(word, id),
            _ => None,
        }
    }
}

fn of_id(word: &str, id: Id) -> String {
    format!("{word}.{id}")
}

impl Way {
    fn code(self) -> &'static str {
        match self {
            Way::Cards => "cards",
            Way::Print => "print",
            Way::Pack => "pack",
            Way::GoesOut => "goes-out",
        }
    }
}

impl Tab {
    fn code(self) -> &'static str {
        match self {
            Tab::Journal => "journal",
            Tab::Cost => "cost",
            Tab::Spent => "spent",
            Tab::Time => "time",
            Tab::Film => "film",
        }
    }

    fn of(code: &str) -> Option<Tab> {
        [Tab::Journal, Tab::Cost, Tab::Spent, Tab::Time, Tab::Film].into_iter().find(|tab| tab.code() == code)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_place_is_found_again_by_its_address() {
        let id = Id::of([7; 16]);
        let places = [
            Place::Bench,
            Place::Stages,
            Place::WorkFor,
            Place::Minute(id),
            Place::Drying(id),
            Place::Builds,
            Place::NewBuild,
            Place::Build(id, Tab::Journal),
            Place::Build(id, Tab::Cost),
            Place::Build(id, Tab::Spent),
            Place::Build(id, Tab::Time),
            Place::Build(id, Tab::Film),
            Place::Opened(id, "labour.mill".into()),
            Place::Saving(id),
            Place::Steps(id),
            Place::HowLong(id),
            Place::PlanOf(id),
            Place::Year,
            Place::SideBySide,
            Place::WhatIf(id),
            Place::Price(id),
            Place::Entry(id),
            Place::Hours,
            Place::Note,
            Place::Homeless,
            Place::Receipt(None),
            Place::Receipt(Some(id)),
            Place::LineLot(id),
            Place::LineExpense(id),
            Place::ByProduct,
            Place::Expense,
            Place::Stock,
            Place::NewLot,
            Place::Lot(id),
            Place::LotJournal(id),
            Place::ShopJournal,
            Place::Same(id),
            Place::Sort(id),
            Place::Use(None),
            Place::Use(Some(id)),
            Place::Return(id),
            Place::Plan,
            Place::Formula,
            Place::Count,
            Place::Losses,
            Place::OnTheShelf,
            Place::Buying,
            Place::Shop,
            Place::Person(None),
            Place::Person(Some(id)),
            Place::Choices,
            Place::Cautions(None),
            Place::Cautions(Some(id)),
            Place::PutAway,
            Place::BringIn,
            Place::Sample,
            Place::Add(Kind::Tool, None),
            Place::Add(Kind::Blade, Some(id)),
            Place::Money(id),
        ];
        for place in places {
            assert_eq!(Place::of(&place.at()), place);
        }
    }

    #[test]
    fn places_of_salvage_are_found_again_too() {
        let id = Id::of([7; 16]);
        for place in [Place::Across, Place::NewFind, Place::Find(id), Place::Chain(id)] {
            assert_eq!(Place::of(&place.at()), place);
        }
    }

    #[test]
    fn the_parts_of_a_build_and_a_mix_are_found_again_by_their_address() {
        let id = Id::of([7; 16]);
        let of_parts = [Place::Parts(id), Place::Cuts(id), Place::Mix(id), Place::Movement(id)];
        for place in of_parts.into_iter().chain([Place::Against(id)]) {
            assert_eq!(Place::of(&place.at()), place);
        }
    }

    #[test]
    fn free_hours_are_found_again_by_their_address() {
        let free = Place::Free(Id::of([7; 16]));
        assert_eq!(Place::of(&free.at()), free);
    }

    #[test]
    fn places_of_tools_are_found_again_too() {
        let id = Id::of([7; 16]);
        for place in [Place::Tools, Place::Tool(id), Place::ToolLife(id), Place::Months] {
            assert_eq!(Place::of(&place.at()), place);
        }
    }

    #[test]
    fn places_of_publishing_are_found_again_too() {
        let id = Id::of([7; 16]);
        for place in [Place::Publishing(id), Place::Leads] {
            assert_eq!(Place::of(&place.at()), place);
        }
    }

    #[test]
    fn sheets_of_the_film_are_found_again_too() {
        let id = Id::of([7; 16]);
        for place in [Place::Slate(id), Place::Take(id), Place::Filming(id), Place::Line(id)] {
            assert_eq!(Place::of(&place.at()), place);
        }
    }

    #[test]
    fn every_way_out_is_found_again_by_its_address() {
        let id = Id::of([7; 16]);
        let ways = [Way::Cards, Way::Print, Way::Pack, Way::GoesOut].map(|way| Place::Out(id, way));
        for place in [Place::Files(None), Place::Files(Some(id))].into_iter().chain(ways) {
            assert_eq!(Place::of(&place.at()), place);
        }
    }

    #[test]
    fn what_is_no_place_is_the_bench() {
        for at in [
            "",
            "attic",
            "build",
            "build.7.cost",
            "lot.",
            "bench.x",
            "entry.0190f3c2.x",
            "journal",
            "journal.x",
            "journal.shop.x",
            "add",
            "add.attic",
            "add.blade.7",
        ] {
            assert_eq!(Place::of(at), Place::Bench, "{at}");
        }
    }
}
