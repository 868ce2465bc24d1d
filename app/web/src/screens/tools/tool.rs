//! A tool: what wear has taken, drawn; the rate of a run hour as a sum; where it runs; what it has carried.

use super::look;
use crate::dom::prelude::*;
use crate::{
    parts::{
        answer::RowLink,
        key::{Key, KeyLink},
        plain,
        sheet::{Above, Below, Hand, Head, Keys, Read, Sheet},
        sum_row::{Group, Leads, SumRow, SumText, SumTotal},
        wear::{WearBar, Worth, WorthText},
    },
    screens::journal::{entry, facts},
    shell::{
        Desk, Place,
        desk::{Phase, View},
        frame::Places,
        mark::LastMarkHere,
    },
    words::{gaps, tools as words},
};
use benchslate_core::{
    costing::{Books, ToolBook},
    journal::{
        Body, Change, Id, Kind, fitted,
        kinds::{self, ToolFrom},
        shop::Tool,
    },
    measure::{Dec, Money, Shown},
};

/// The sheet.
#[component]
pub fn ToolSheet(tool: Id) -> impl IntoView {
    let desk = Desk::here();
    let look = Memo::new(move |_| desk.books(|books, view| looked(books, view, tool)));
    let title = Signal::derive(move || match look.read().as_ref() {
        Some(look) => look.title.clone(),
        None if desk.phase.get() == Phase::Ready => words::no_tool().to_owned(),
        None => String::new(),
    });
    let note = Signal::derive(move || look.read().as_ref().map(|look| look.ran.clone()));
    // The keys stand while hours run and wear is worked out anew.
    let there = Memo::new(move |_| look.read().is_some());
    let gone = Memo::new(move |_| look.read().as_ref().is_some_and(|look| look.gone));
    let blade = Memo::new(move |_| look.read().as_ref().is_some_and(|look| look.blade));
    view! {
        <Sheet>
            <Head title=title note=note tight=true/>
            <Above>
                <Read name=title below=words::sheet_below().to_owned()>
                    {move || look.get().map(drawn)}
                </Read>
            </Above>
            <Below>
                <LastMarkHere/>
                <Hand name=words::keys().to_owned()>{move || there.get().then(|| keys(desk, tool, gone, blade))}</Hand>
                <Places cell=4/>
            </Below>
        </Sheet>
    }
}

/// The sheet in plain words.
#[derive(Clone, Debug, PartialEq)]
struct Look {
    title: String,
    ran: String,
    /// None: no price.
    worth: Option<(f64, f64, f64)>,
    says: [String; 5],
    rate: Vec<Row>,
    total: String,
    runs: String,
    carried: Vec<Row>,
    blades: Vec<Row>,
    read_off: Vec<Row>,
    gaps: Vec<(String, &'static str, Option<String>)>,
    /// A blade is on.
    blade: bool,
    gone: bool,
}

#[derive(Clone, Debug, Default, PartialEq)]
struct Row {
    sign: &'static str,
    label: String,
    working: String,
    figure: String,
    href: Option<String>,
}

fn looked(books: &Books, view: &View, id: Id) -> Option<Look> {
    let (tool, book) = (view.shop.tools.get(&id)?, books.tool(id)?);
    let (worth, says) = worth(view, tool, book);
    let total = book.rate_with_blade();
    let today = view.shop.zone.day(books.as_of);
    let on = view.shop.blade_on(id, today);
    let told = book.gaps.iter().map(|gap| gaps::gap(gap, view.shop));
    Some(Look {
        title: tool.name.clone(),
        ran: match tool.gone {
            Some(gone) => words::gone_since(&view.tongue.day(gone)),
            None => words::ran(&look::hours(view, book.hours_all)),
        },
        worth,
        says,
        rate: rate(view, id, tool, book, on.map(|it| (it.order.entry, it.what.clone()))),
        total: look::rate(view, total),
        runs: runs(view, tool),
        carried: carried(view, book),
        blades: blades(books, view, id),
        read_off: read_off(view, id),
        gaps: told.map(|told| (told.says, told.how, told.place.map(|place| place.href()))).collect(),
        blade: on.is_some(),
        gone: tool.gone.is_some(),
    })
}

fn worth(view: &View, tool: &Tool, book: &ToolBook) -> (Option<(f64, f64, f64)>, [String; 5]) {
    let (Some(price), Some(value), Some(worn)) = (tool.price, book.book_value, book.worn(tool)) else {
        return (None, Default::default());
    };
    let money = |it: Money| view.tongue.money(it);
    let long = |it: Money| plain::read(&it.shown(2));
    let resale = if tool.resale.is_zero() { String::new() } else { words::resale(&money(tool.resale)) };
    let says = [
        words::price(&money(price)),
        resale,
        words::worn(&money(worn)),
        words::book_value(&money(value)),
        words::worth_name(&money(price), &money(worn), &money(value)),
    ];
    (Some((long(price), long(value), long(tool.resale))), says)
}

/// Wear + upkeep + power + blade, each as it is shown within the sum.
fn rate(view: &View, id: Id, tool: &Tool, book: &ToolBook, on: Option<(Id, String)>) -> Vec<Row> {
    let minor = view.tongue.minor().saturating_add(1);
    let [wear, power, blade] = [book.wear, book.power, book.blade].map(Option::unwrap_or_default);
    let shown = Shown::alone(book.rate_with_blade(), minor).parts(&[wear, book.upkeep, power, blade]);
    let mut figures = shown.into_iter().map(|it| view.tongue.shown(it));
    let mut next = |given: bool| {
        let figure = figures.next().unwrap_or_default();
        if given { figure } else { words::not_known().to_owned() }
    };
    let correct = Some(Place::Entry(id).href());
    let row = |sign, label: &str, working: String, figure: String, href: Option<String>| Row {
        sign,
        label: label.to_owned(),
        working,
        figure,
        href,
    };
    let mut rows =
        vec![row("", words::wear(), wear_working(view, tool), next(book.wear.is_some()), correct.clone())];
    rows.push(row("+", words::upkeep(), words::no_blades_in_it().to_owned(), next(true), correct.clone()));
    rows.push(row("+", words::power(), power_working(view, tool), next(book.power.is_some()), correct));
    if let Some((entry, what)) = on {
        let fitted = view.shop.blades.iter().find(|it| it.order.entry == entry);
        let working = fitted.and_then(|it| {
            let life = view.tongue.quantity(it.life?);
            Some(words::blade_working(&view.tongue.money(it.cost), &life, &view.tongue.day(it.order.day)))
        });
        rows.push(row("+", &what, working.unwrap_or_default(), next(true), Some(Place::Entry(entry).href())));
    }
    rows
}

fn wear_working(view: &View, tool: &Tool) -> String {
    match tool.from {
        ToolFrom::Lent => return words::lent_no_wear().to_owned(),
        ToolFrom::Supplied => return words::supplied_no_wear().to_owned(),
        ToolFrom::Bought => {}
    }
    if let Some((from, hours)) = tool.left.last() {
        return words::left_since(&view.tongue.quantity(*hours), &view.tongue.day(*from));
    }
    let (Some(price), Some(life)) = (tool.price, tool.life) else { return String::new() };
    let resale = (!tool.resale.is_zero()).then(|| view.tongue.money(tool.resale));
    words::wear_working(&view.tongue.money(price), resale.as_deref(), &view.tongue.quantity(life))
}

fn power_working(view: &View, tool: &Tool) -> String {
    let setting = |key| view.shop.settings.latest(key);
    if setting(kinds::SettingKey::PowerIn) == Some("month") {
        return words::power_in_the_month().to_owned();
    }
    if tool.kw.is_zero() {
        return words::draws_none().to_owned();
    }
    let price = setting(kinds::SettingKey::KwhPrice).and_then(|text| Dec::parse(text).ok());
    let price = price.map(|it| view.tongue.number(&it.plain())).unwrap_or_default();
    words::power_working(
        &view.tongue.quantity(tool.kw),
        &view.tongue.number(&Dec(tool.load.to_decimal()).plain()),
        &price,
    )
}

fn runs(view: &View, tool: &Tool) -> String {
    if tool.rolls {
        return words::runs_rolling().to_owned();
    }
    let at = tool.duty.iter().map(|(stage, share)| {
        words::share_of(&view.tongue.number(&Dec(share.to_decimal()).plain()), &facts::stage(view, *stage))
    });
    words::runs(&at.collect::<Vec<String>>())
}

fn carried(view: &View, book: &ToolBook) -> Vec<Row> {
    let row = |(bearer, hours, cost): &(kinds::Bearer, _, Money)| Row {
        label: facts::bearer(view, *bearer),
        working: look::hours(view, *hours),
        figure: view.tongue.money(*cost),
        href: match bearer {
            kinds::Bearer::Build(id) => Some(Place::Opened(*id, "true.tools".to_owned()).href()),
            kinds::Bearer::Lot(id) => Some(Place::Lot(*id).href()),
            kinds::Bearer::Shop => None,
        },
        ..Row::default()
    };
    book.carried.iter().map(row).collect()
}

fn blades(books: &Books, view: &View, tool: Id) -> Vec<Row> {
    let of_tool = view.shop.blades.iter().rev().filter(|it| it.tool == tool);
    let row = |it: &benchslate_core::journal::shop::Blade| {
        let book = books.blades().iter().find(|book| book.blade == it.order.entry)?;
        let money = |it: Money| view.tongue.money(it);
        let working = match it.off {
            Some(off) if book.off => words::blade_off(&view.tongue.day(off), &money(book.left)),
            _ => words::blade_on(&view.tongue.day(it.order.day), &money(book.left)),
        };
        Some(Row {
            label: it.what.clone(),
            working,
            figure: money(book.worn),
            href: Some(Place::Entry(it.order.entry).href()),
            ..Row::default()
        })
    };
    of_tool.filter_map(row).collect()
}

/// The latest hours that were read off or typed by hand.
fn read_off(view: &View, tool: Id) -> Vec<Row> {
    let of_tool = view.shop.tool_hours.iter().rev().filter(|it| it.tool == tool).take(5);
    let row = |it: &benchslate_core::journal::shop::ToolHours| Row {
        label: view.tongue.day(it.order.day),
        working: words::at_for(&facts::stage(view, it.stage), &facts::bearer(view, it.bearer)),
        figure: look::hours(view, it.hours),
        href: Some(Place::Entry(it.order.entry).href()),
        ..Row::default()
    };
    of_tool.map(row).collect()
}

fn drawn(look: Look) -> AnyView {
    let [price, resale, worn, book, name] = look.says;
    let bar = look.worth.map(|(all, value, sells)| {
        let worth = Worth { price: all, book: value, resale: sells };
        view! { <WearBar worth text=WorthText { price, resale, worn, book, name }/> }
    });
    let gap = |(says, how, href): (String, &'static str, Option<String>)| {
        let leads = href.map_or(Leads::Nowhere, Leads::To);
        view! { <RowLink label=says end=how leads/> }
    };
    view! {
        {bar}
        {look.gaps.into_iter().map(gap).collect::<Vec<_>>()}
        {rows(look.rate, true)}
        <SumTotal label=words::a_run_hour().to_owned() figure=look.total/>
        <p class="note">{look.runs}</p>
        {group(words::carried(), look.carried)}
        {group(words::blades(), look.blades)}
        {group(words::read_off(), look.read_off)}
    }
}

fn group(title: &'static str, of: Vec<Row>) -> Option<AnyView> {
    (!of.is_empty()).then(|| view! { <Group title=title.to_owned()/>{rows(of, false)} })
}

fn rows(rows: Vec<Row>, signed: bool) -> Vec<AnyView> {
    let row = |it: Row| {
        let text = SumText {
            sign: it.sign.to_owned(),
            label: it.label,
            working: Some(it.working).filter(|working| !working.is_empty()),
            figure: it.figure,
            lacks: false,
        };
        view! { <SumRow text leads=it.href.map_or(Leads::Nowhere, Leads::To) signed/> }
    };
    rows.into_iter().map(row).collect()
}

fn keys(desk: Desk, tool: Id, gone: Memo<bool>, blade: Memo<bool>) -> AnyView {
    let off = move || {
        let tap = Callback::new(move |()| blade_off(desk, tool));
        let key = || view! { <Key label=words::blade_comes_off().to_owned() note=words::rest_is_lost().to_owned() on_tap=tap/> };
        blade.get().then(key)
    };
    let life = move || if gone.get() { words::back_label() } else { words::gone_key() }.to_owned();
    let life_note = move || Some(if gone.get() { words::back_note() } else { words::gone_note() }.to_owned());
    view! {
        <Keys class="low">
            <KeyLink label=words::hours_by_hand().to_owned() href=Place::Add(Kind::ToolHours, Some(tool)).href()/>
            <KeyLink label=words::new_blade().to_owned() href=Place::Add(Kind::Blade, Some(tool)).href()/>
        </Keys>
        <Keys class="low">
            {off}
            <KeyLink label=words::life_key().to_owned() note=words::life_note().to_owned() href=Place::ToolLife(tool).href()/>
        </Keys>
        <Keys class="low">
            <Key label=Signal::derive(life) note=Signal::derive(life_note) on_tap=Callback::new(move |()| goes(desk, tool))/>
            <KeyLink label=words::correct().to_owned() href=Place::Entry(tool).href()/>
        </Keys>
    }
}

/// The blade that is on comes off today, without another in its place.
fn blade_off(desk: Desk, tool: Id) {
    let what = desk.now_read(|view| {
        let today = view.shop.zone.day(desk.at_tap());
        view.shop.blade_on(tool, today).map(|it| it.order.entry)
    });
    let Some(blade) = what else { return };
    desk.act(
        move |hand| {
            let today = hand.shop.zone.day(hand.now);
            fitted::take_off(hand.journal, hand.shop, tool, today, None)
        },
        move |after| {
            let books = after.books();
            let left =
                books.blades().iter().find(|it| it.blade == blade).map(|it| after.tongue.money(it.left));
            entry::marked(&after.view(), blade, &words::marked_off(&left.unwrap_or_default()))
        },
    );
}

/// Gone today; or, gone already, back again.
fn goes(desk: Desk, tool: Id) {
    desk.act(
        move |hand| {
            let today = hand.shop.zone.day(hand.now);
            let Some(Body::Tool(it)) = hand.journal.body(tool) else { return Vec::new() };
            let gone = if it.gone.is_some() { None } else { Some(today) };
            vec![Change::write(tool, kinds::Tool { gone, ..it.clone() })]
        },
        move |after| {
            let gone = after.shop.tools.get(&tool).is_some_and(|it| it.gone.is_some());
            entry::marked(&after.view(), tool, if gone { words::marked_gone() } else { words::marked_back() })
        },
    );
}
