//! The pack as one text: what goes under a film, in words.

use crate::{
    shell::desk::View,
    words::{pack as words, units},
};
use benchslate_core::{
    exchange::{
        chapters,
        pack::{Disclosed, MadeOf, Material, Pack},
    },
    journal::{Id, kinds::Source},
    measure::Money,
};

/// Blocks, an empty line between them. Empty: nothing is known yet.
pub fn text(view: &View, pack: &Pack) -> String {
    let mut blocks: Vec<Vec<String>> = Vec::new();
    blocks.push(pack.disclosed.iter().map(|it| disclosed(view, it)).collect());
    blocks.push(materials(view, &pack.materials));
    let tools = pack.tools.iter().map(|it| words::line(&it.name, "", it.link.as_deref()));
    blocks.push(headed(words::tools(), tools.collect()));
    // They were looked at when the pack was put together.
    let list = chapters::list(&pack.chapters, None).unwrap_or_default();
    blocks.push(headed(words::chapters(), list.lines().map(str::to_owned).collect()));
    blocks.push(costs(view, pack));
    let blocks = blocks.into_iter().filter(|block| !block.is_empty()).map(|block| block.join("\n"));
    blocks.collect::<Vec<_>>().join("\n\n")
}

fn headed(heading: &str, lines: Vec<String>) -> Vec<String> {
    if lines.is_empty() {
        return lines;
    }
    let mut all = vec![heading.to_owned()];
    all.extend(lines);
    all
}

fn materials(view: &View, all: &[Material]) -> Vec<String> {
    let mut lines = Vec::new();
    let mut under: Option<MadeOf> = None;
    for it in all {
        if under != Some(it.made_of) {
            lines.push(words::heading(it.made_of).to_owned());
            under = Some(it.made_of);
        }
        let amount = units::amount_short(view.tongue, it.quantity, it.unit, word(view, it.source).as_deref());
        lines.push(words::line(&it.name, &amount, it.link.as_deref()));
    }
    lines
}

/// The maker's own word for one of it.
fn word(view: &View, source: Source) -> Option<String> {
    let item = match source {
        Source::Item(id) => Some(id),
        Source::Lot(id) => view.shop.lots.get(&id)?.item,
    };
    item.and_then(|id: Id| view.shop.item(id)?.word.clone())
}

fn disclosed(view: &View, it: &Disclosed) -> String {
    let money = |fee: &Option<Money>| fee.map(|fee| view.tongue.money(fee));
    match it {
        Disclosed::Paid { fee, by } => words::paid(money(fee).as_deref(), by.as_deref()),
        Disclosed::Given { what } => words::given(what, None),
        Disclosed::GivenTool { what, by } => words::given(what, by.as_deref()),
        Disclosed::LentTool { what, by } => words::lent(what, by.as_deref()),
        Disclosed::Affiliate => words::affiliate().to_owned(),
    }
}

fn costs(view: &View, pack: &Pack) -> Vec<String> {
    let Some((kinds, whole)) = &pack.costs else { return Vec::new() };
    let line = |(kind, shown): &(_, _)| words::cost_line(*kind, &view.tongue.shown(*shown));
    let mut lines: Vec<String> = kinds.iter().map(line).collect();
    lines.push(words::in_all(&view.tongue.shown(*whole), view.tongue.currency()));
    headed(words::cost(), lines)
}
