//! Currencies: which codes there are, and how many digits their minor unit has.
//!
//! Source: ISO 4217 list one, as of 2026-02-01 (`datasets/currency-codes`, built from the lists of
//! the maintenance agency). Codes without a minor unit (gold, testing, units of account) hold no
//! money and are left out. CLDR differs for thirteen codes and is not followed here.
//! Not here: names and signs, which the browser has; exchange rates, which nobody adds up.

/// Digits after the point by ISO 4217; 2 for a code that isn't known.
///
/// ```
/// # use benchslate_core::measure::currency::minor_digits;
/// assert_eq!((minor_digits("CAD"), minor_digits("JPY"), minor_digits("KWD")), (2, 0, 3));
/// ```
pub fn minor_digits(code: &str) -> u8 {
    if holds(NONE, code) {
        0
    } else if holds(THREE, code) {
        3
    } else if holds(FOUR, code) {
        4
    } else {
        2
    }
}

/// Whether the code, in capitals, is one in use.
pub fn known(code: &str) -> bool {
    [TWO, NONE, THREE, FOUR].iter().any(|list| holds(list, code))
}

/// Every code in use, by its digits and then by letter.
pub fn codes() -> impl Iterator<Item = &'static str> {
    [TWO, NONE, THREE, FOUR].into_iter().flat_map(str::split_ascii_whitespace)
}

fn holds(list: &str, code: &str) -> bool {
    list.split_ascii_whitespace().any(|known| known == code)
}

const NONE: &str = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";
const THREE: &str = "BHD IQD JOD KWD LYD OMR TND";
const FOUR: &str = "CLF UYW";
const TWO: &str = "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BOV BRL BSD BTN BWP \
    BYN BZD CAD CDF CHE CHF CHW CNY COP COU CRC CUP CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP \
    GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW KYD KZT LAK LBP LKR \
    LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB \
    PEN PGK PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL \
    THB TJS TMT TOP TRY TTD TWD TZS UAH USD USN UYU UZS VED VES WST XAD XCD XCG YER ZAR ZMW ZWG";

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_is_known_only_whole_and_in_capitals() {
        assert!(known("CAD"));
        for code in ["", "CA", "cad", "CAD USD", "XXX", "XAU", " "] {
            assert!(!known(code), "{code}");
        }
    }

    #[test]
    fn no_code_stands_twice() {
        let mut all: Vec<_> = codes().collect();
        all.sort_unstable();
        let before = all.len();
        all.dedup();
        assert_eq!(all.len(), before);
        assert!(all.iter().all(|code| code.len() == 3));
    }
}
