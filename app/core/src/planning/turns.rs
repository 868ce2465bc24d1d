//! Whose turn it is: builds that the maker puts before all others, in one setting.
//!
//! Who is put first goes before those that were put first earlier; a build that was never put first goes by its date
//! (`asking`). Source: our own rule, DEVELOPERS.md § House.

use crate::{
    journal::{Id, Shop, kinds::SettingKey},
    measure::Day,
};

/// The builds that a value of [`SettingKey::BuildOrder`] names; a word that is no id is left out.
pub fn read(value: &str) -> impl Iterator<Item = Id> + '_ {
    value.split(',').filter_map(Id::parse)
}

/// The place of a build among those put first; past all of them where it was never put there.
pub fn turn(shop: &Shop, build: Id, today: Day) -> usize {
    let value = shop.settings.on(SettingKey::BuildOrder, today).unwrap_or_default();
    read(value).position(|it| it == build).unwrap_or(usize::MAX)
}

/// The value of the setting with a build before all others.
pub fn put_first(shop: &Shop, build: Id, today: Day) -> String {
    let value = shop.settings.on(SettingKey::BuildOrder, today).unwrap_or_default();
    let others = read(value).filter(|it| *it != build);
    let all: Vec<String> = [build].into_iter().chain(others).map(|it| it.to_string()).collect();
    all.join(",")
}

#[cfg(test)]
#[allow(clippy::unwrap_used, reason = "a test that can't go on must stop")]
mod tests {
    use super::*;
    use crate::{fixture::fixture, planning::open_builds};

    const THREE: &str = "build trays due 2026-03-01\n build shelf due 2026-02-20\n build stool";

    fn order(put_first: &[&str]) -> Vec<String> {
        let mut text = THREE.to_owned();
        for name in put_first {
            let it = fixture(&text);
            let value = super::put_first(&it.shop(), it.id(name), it.shop().zone.day(it.end()));
            let value: Vec<String> = read(&value).map(|id| id.to_string()).collect();
            text = format!("{text}\n setting build-order {}", value.join(","));
        }
        let it = fixture(&text);
        let (shop, today) = (it.shop(), it.shop().zone.day(it.end()));
        open_builds(&shop, today).iter().map(|id| shop.builds.get(id).unwrap().title.clone()).collect()
    }

    #[test]
    fn dates_order_builds_until_one_is_put_first() {
        assert_eq!(order(&[]), ["shelf", "trays", "stool"]);
        assert_eq!(order(&["stool"]), ["stool", "shelf", "trays"]);
        assert_eq!(order(&["stool", "trays"]), ["trays", "stool", "shelf"]);
        assert_eq!(order(&["stool", "trays", "stool"]), ["stool", "trays", "shelf"]);
    }

    #[test]
    fn what_is_no_build_stands_in_nobodys_way() {
        let it = fixture(&format!("{THREE}\n setting build-order nonsense"));
        let today = it.shop().zone.day(it.end());
        assert_eq!(open_builds(&it.shop(), today).first(), Some(&it.id("shelf")));
        assert_eq!(put_first(&it.shop(), it.id("stool"), today), it.id("stool").to_string());
    }
}
