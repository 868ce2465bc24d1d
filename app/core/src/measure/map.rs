//! A map in the order of its keys, as a list that is kept sorted.
//!
//! The library's tree is written anew by the compiler for each pair of key and value, three kilobytes and more a time,
//! and there are dozens of pairs. This is a list and a search. Adding in the order of the keys, as ids mostly come,
//! costs nothing more; adding in between moves what stands after it, so thousands of keys in no order are better
//! collected than inserted one by one. Lines and entries of a journal stay in trees, and so do
//! a shop's lots: they are large and many, and not folded in the order of their ids.

use super::InOrder;
use std::{borrow::Borrow, mem::replace};

/// Values by keys, in the order of the keys.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Map<K, V>(Vec<(K, V)>);

impl<K, V> Default for Map<K, V> {
    fn default() -> Self {
        Map(Vec::new())
    }
}

impl<K, V> Map<K, V> {
    /// Nothing in it.
    pub const fn new() -> Map<K, V> {
        Map(Vec::new())
    }

    /// How many keys.
    pub fn len(&self) -> usize {
        self.0.len()
    }

    /// None.
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// Keys and values.
    pub fn iter(&self) -> Pairs<'_, K, V> {
        self.0.iter().map(pair)
    }

    /// Keys, and values to be changed.
    pub fn iter_mut(&mut self) -> impl Iterator<Item = (&K, &mut V)> {
        self.0.iter_mut().map(|(key, value)| (&*key, value))
    }

    /// The keys.
    pub fn keys(&self) -> impl DoubleEndedIterator<Item = &K> + ExactSizeIterator + Clone {
        self.0.iter().map(|(key, _)| key)
    }

    /// The values, in the order of their keys.
    pub fn values(&self) -> impl DoubleEndedIterator<Item = &V> + ExactSizeIterator + Clone {
        self.0.iter().map(|(_, value)| value)
    }

    /// The values, to be changed.
    pub fn values_mut(&mut self) -> impl Iterator<Item = &mut V> {
        self.0.iter_mut().map(|(_, value)| value)
    }

    /// The values alone.
    pub fn into_values(self) -> impl Iterator<Item = V> {
        self.0.into_iter().map(|(_, value)| value)
    }

    /// Keeps what is to stay.
    pub fn retain(&mut self, mut stays: impl FnMut(&K, &mut V) -> bool) {
        self.0.retain_mut(|(key, value)| stays(key, value));
    }
}

impl<K: Ord, V> Map<K, V> {
    /// Where the key stands, or where it would.
    fn place<Q: Ord + ?Sized>(&self, key: &Q) -> Result<usize, usize>
    where
        K: Borrow<Q>,
    {
        // What comes last is what is asked for most while a map is made.
        match self.0.last() {
            Some((last, _)) if last.borrow() < key => Err(self.0.len()),
            _ => self.0.binary_search_by(|(it, _)| it.borrow().cmp(key)),
        }
    }

    /// The value of a key.
    pub fn get<Q: Ord + ?Sized>(&self, key: &Q) -> Option<&V>
    where
        K: Borrow<Q>,
    {
        self.0.get(self.place(key).ok()?).map(|(_, value)| value)
    }

    /// The value of a key, to be changed.
    pub fn get_mut<Q: Ord + ?Sized>(&mut self, key: &Q) -> Option<&mut V>
    where
        K: Borrow<Q>,
    {
        let at = self.place(key).ok()?;
        self.0.get_mut(at).map(|(_, value)| value)
    }

    /// Whether there is such a key.
    pub fn contains_key<Q: Ord + ?Sized>(&self, key: &Q) -> bool
    where
        K: Borrow<Q>,
    {
        self.place(key).is_ok()
    }

    /// Gives the key this value, and says which it had.
    pub fn insert(&mut self, key: K, value: V) -> Option<V> {
        match self.place(&key) {
            Ok(at) => self.0.get_mut(at).map(|(_, before)| replace(before, value)),
            Err(at) => {
                self.0.insert(at, (key, value));
                None
            }
        }
    }

    /// Takes the key out, and gives its value.
    pub fn remove<Q: Ord + ?Sized>(&mut self, key: &Q) -> Option<V>
    where
        K: Borrow<Q>,
    {
        let at = self.place(key).ok()?;
        Some(self.0.remove(at).1)
    }

    /// The place of a key, filled or not.
    pub fn entry(&mut self, key: K) -> Slot<'_, K, V> {
        Slot { map: self, key }
    }

    /// The key's value; where it has none, one is made first.
    #[allow(clippy::indexing_slicing, reason = "it was just found there, or put there")]
    fn filled(&mut self, key: K, value: impl FnOnce() -> V) -> &mut V {
        let at = match self.place(&key) {
            Ok(at) => at,
            Err(at) => {
                self.0.insert(at, (key, value()));
                at
            }
        };
        &mut self.0[at].1
    }
}

/// Keys and values, borrowed.
pub type Pairs<'a, K, V> = std::iter::Map<std::slice::Iter<'a, (K, V)>, fn(&'a (K, V)) -> (&'a K, &'a V)>;

fn pair<K, V>(it: &(K, V)) -> (&K, &V) {
    (&it.0, &it.1)
}

/// The place of a key, filled or not.
pub struct Slot<'a, K, V> {
    map: &'a mut Map<K, V>,
    key: K,
}

impl<'a, K: Ord, V> Slot<'a, K, V> {
    /// What stands there; where nothing does, this.
    pub fn or_insert_with(self, value: impl FnOnce() -> V) -> &'a mut V {
        self.map.filled(self.key, value)
    }

    /// What stands there; where nothing does, this.
    pub fn or_insert(self, value: V) -> &'a mut V {
        self.or_insert_with(|| value)
    }

    /// What stands there; where nothing does, the value that is there by itself.
    pub fn or_default(self) -> &'a mut V
    where
        V: Default,
    {
        self.or_insert_with(V::default)
    }
}

impl<K: Ord, V> FromIterator<(K, V)> for Map<K, V> {
    /// Of several values of one key the last stays.
    fn from_iter<I: IntoIterator<Item = (K, V)>>(all: I) -> Self {
        let mut all: Vec<(K, V)> = all.into_iter().collect();
        if !all.is_sorted_by(|a, b| a.0 < b.0) {
            all.order_by(|a, b| a.0.cmp(&b.0));
            all.reverse();
            all.dedup_by(|a, b| a.0 == b.0);
            all.reverse();
        }
        Map(all)
    }
}

impl<K: Ord, V> Extend<(K, V)> for Map<K, V> {
    fn extend<I: IntoIterator<Item = (K, V)>>(&mut self, more: I) {
        for (key, value) in more {
            self.insert(key, value);
        }
    }
}

impl<K, V> IntoIterator for Map<K, V> {
    type Item = (K, V);
    type IntoIter = std::vec::IntoIter<(K, V)>;

    fn into_iter(self) -> Self::IntoIter {
        self.0.into_iter()
    }
}

impl<'a, K, V> IntoIterator for &'a Map<K, V> {
    type Item = (&'a K, &'a V);
    type IntoIter = Pairs<'a, K, V>;

    fn into_iter(self) -> Self::IntoIter {
        self.iter()
    }
}

/// For tests, which fail where there is no such key.
#[cfg(any(test, feature = "fixture"))]
#[allow(clippy::expect_used, reason = "in tests only")]
impl<K: Ord, V> std::ops::Index<&K> for Map<K, V> {
    type Output = V;

    fn index(&self, key: &K) -> &V {
        self.get(key).expect("the key is there")
    }
}

#[cfg(test)]
mod tests {
    use super::Map;
    use proptest::prelude::*;
    use std::collections::BTreeMap;

    proptest! {
        #[test]
        fn as_the_librarys_map(acts in prop::collection::vec((0..5_u8, 0..12_u8, any::<u8>()), 0..60)) {
            let (mut ours, mut theirs) = (Map::new(), BTreeMap::new());
            for (act, key, value) in &acts {
                match act {
                    0 => prop_assert_eq!(ours.insert(*key, *value), theirs.insert(*key, *value)),
                    1 => prop_assert_eq!(ours.remove(key), theirs.remove(key)),
                    2 => {
                        let (mine, other) = (ours.entry(*key).or_default(), theirs.entry(*key).or_default());
                        *mine = mine.wrapping_add(*value);
                        *other = other.wrapping_add(*value);
                    }
                    3 => prop_assert_eq!(ours.get_mut(key), theirs.get_mut(key)),
                    _ => prop_assert_eq!(ours.contains_key(key), theirs.contains_key(key)),
                }
                prop_assert!(ours.iter().eq(theirs.iter()));
            }
            let pairs = || acts.iter().map(|(_, key, value)| (*key, *value));
            prop_assert!(pairs().collect::<Map<_, _>>().into_iter().eq(pairs().collect::<BTreeMap<_, _>>()));
        }
    }
}
