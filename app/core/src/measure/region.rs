//! A first guess at a shop's currency, measures and week from where it seems to be.
//!
//! Only a guess: the maker sees it and can change it. Sources: Unicode CLDR 48.2 supplemental data
//! (currency in use first by CLDR's preference, first day of the week, measurement system, likely
//! region of a language); IANA tz database 2025b `zone.tab` for the region of a zone, with the older
//! names that browsers still give. Not here: formats, which the browser has.

use super::{Weekday, marks::Gallons};

/// A region of ISO 3166 that has a currency of its own or uses another's.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Region {
    code: &'static str,
    currency: &'static str,
    first_day: Weekday,
}

/// How timber is measured.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measures {
    /// Millimetres, square and cubic metres.
    Metric,
    /// Inches, feet and board feet.
    Inches,
}

impl Region {
    /// By its code of two capitals. `None`: no such region, or none with money.
    pub fn of(code: &str) -> Option<Region> {
        WEEKS.iter().find_map(|(first_day, regions)| {
            let mut pairs = regions.split_ascii_whitespace().filter_map(|pair| pair.split_once(':'));
            let (code, currency) = pairs.find(|(region, _)| *region == code)?;
            Some(Region { code, currency, first_day: *first_day })
        })
    }

    /// The region that a language tag names: `en-CA`, `pt-BR`, `zh-Hant-TW`.
    pub fn of_language(tag: &str) -> Option<Region> {
        let subtags = tag.split(['-', '_']).skip(1).take_while(|subtag| subtag.len() > 1);
        subtags.filter(|subtag| subtag.len() == 2).find_map(|subtag| Region::of(&subtag.to_ascii_uppercase()))
    }

    /// The region where a language tag without one is most at home: `da` in Denmark.
    pub fn likely_of_language(tag: &str) -> Option<Region> {
        let language = tag.split(['-', '_']).next()?.to_ascii_lowercase();
        let mut pairs = LIKELY.split_ascii_whitespace().filter_map(|pair| pair.split_once(':'));
        pairs.find(|(known, _)| *known == language).and_then(|(_, region)| Region::of(region))
    }

    /// The region of a time zone by its name in the IANA tz database: `America/Toronto`.
    pub fn of_zone(name: &str) -> Option<Region> {
        let (area, place) = name.split_once('/')?;
        let held = |places: &str| places.split_ascii_whitespace().any(|known| known == place);
        let row = ZONES.iter().find(|(_, of, places)| *of == area && held(places))?;
        Region::of(row.0)
    }

    /// The best guess: where the clock is, else what the language says, else where it is at home.
    ///
    /// ```
    /// # use benchslate_core::measure::{Weekday, region::{Measures, Region}};
    /// let shop = Region::guess("en-US", "America/Toronto").unwrap();
    /// assert_eq!((shop.code(), shop.currency()), ("CA", "CAD"));
    /// assert_eq!((shop.measures(), shop.first_day()), (Measures::Inches, Weekday::Sunday));
    /// ```
    pub fn guess(language: &str, zone: &str) -> Option<Region> {
        Region::of_zone(zone)
            .or_else(|| Region::of_language(language))
            .or_else(|| Region::likely_of_language(language))
    }

    /// Its code of two capitals.
    pub fn code(self) -> &'static str {
        self.code
    }

    /// Its currency, a code of ISO 4217.
    pub fn currency(self) -> &'static str {
        self.currency
    }

    /// The day on which its week begins.
    pub fn first_day(self) -> Weekday {
        self.first_day
    }

    /// How its timber yards measure: CLDR's measurement system, but for Canada, where lumber is
    /// sold by nominal inches and board feet (common practice), and the US territories.
    pub fn measures(self) -> Measures {
        match self.code {
            "US" | "LR" | "CA" | "PR" | "GU" | "VI" | "AS" | "MP" | "UM" => Measures::Inches,
            _ => Measures::Metric,
        }
    }

    /// Whose gallons and fluid ounces: CLDR's UK system, and those who had it (common practice).
    pub fn gallons(self) -> Gallons {
        match self.code {
            "GB" | "MM" | "IE" | "AU" | "NZ" | "IN" | "ZA" | "MT" => Gallons::Imperial,
            _ => Gallons::Us,
        }
    }
}

/// Regions with their currencies, by the first day of the week.
const WEEKS: [(Weekday, &str); 4] = [
    (Weekday::Monday, FROM_MONDAY),
    (Weekday::Sunday, FROM_SUNDAY),
    (Weekday::Saturday, FROM_SATURDAY),
    (Weekday::Friday, FROM_FRIDAY),
];

const FROM_FRIDAY: &str = "MV:MVR";
const FROM_SATURDAY: &str = "AF:AFN BH:BHD DJ:DJF DZ:DZD EG:EGP IQ:IQD IR:IRR JO:JOD KW:KWD LY:LYD OM:OMR QA:QAR SD:SDG \
    SY:SYP";
const FROM_SUNDAY: &str = "AG:XCD AS:USD BD:BDT BR:BRL BS:BSD BT:BTN BW:BWP BZ:BZD CA:CAD CO:COP DM:XCD DO:DOP ET:ETB \
    GT:GTQ GU:USD HK:HKD HN:HNL ID:IDR IL:ILS IN:INR IS:ISK JM:JMD JP:JPY KE:KES KH:KHR KR:KRW \
    LA:LAK MH:USD MM:MMK MO:MOP MT:EUR MX:MXN MZ:MZN NI:NIO NP:NPR PA:PAB PE:PEN PH:PHP PK:PKR \
    PR:USD PT:EUR PY:PYG SA:SAR SG:SGD SV:USD TH:THB TT:TTD TW:TWD UM:USD US:USD VE:VES VI:USD \
    WS:WST YE:YER ZA:ZAR ZW:ZWG";
const FROM_MONDAY: &str = "AD:EUR AE:AED AI:XCD AL:ALL AM:AMD AO:AOA AR:ARS AT:EUR AU:AUD AW:AWG AX:EUR AZ:AZN BA:BAM \
    BB:BBD BE:EUR BF:XOF BG:EUR BI:BIF BJ:XOF BL:EUR BM:BMD BN:BND BO:BOB BQ:USD BY:BYN CC:AUD \
    CD:CDF CF:XAF CG:XAF CH:CHF CI:XOF CK:NZD CL:CLP CM:XAF CN:CNY CR:CRC CU:CUP CV:CVE CW:XCG \
    CX:AUD CY:EUR CZ:CZK DE:EUR DK:DKK EC:USD EE:EUR EH:MAD ER:ERN ES:EUR FI:EUR FJ:FJD FK:FKP \
    FM:USD FO:DKK FR:EUR GA:XAF GB:GBP GD:XCD GE:GEL GF:EUR GG:GBP GH:GHS GI:GIP GL:DKK GM:GMD \
    GN:GNF GP:EUR GQ:XAF GR:EUR GS:GBP GW:XOF GY:GYD HR:EUR HT:HTG HU:HUF IE:EUR IM:GBP IO:USD \
    IT:EUR JE:GBP KG:KGS KI:AUD KM:KMF KN:XCD KP:KPW KY:KYD KZ:KZT LB:LBP LC:XCD LI:CHF LK:LKR \
    LR:LRD LS:ZAR LT:EUR LU:EUR LV:EUR MA:MAD MC:EUR MD:MDL ME:EUR MF:EUR MG:MGA MK:MKD ML:XOF \
    MN:MNT MP:USD MQ:EUR MR:MRU MS:XCD MU:MUR MW:MWK MY:MYR NA:NAD NC:XPF NE:XOF NF:AUD NG:NGN \
    NL:EUR NO:NOK NR:AUD NU:NZD NZ:NZD PF:XPF PG:PGK PL:PLN PM:EUR PN:NZD PS:ILS PW:USD RE:EUR \
    RO:RON RS:RSD RU:RUB RW:RWF SB:SBD SC:SCR SE:SEK SH:SHP SI:EUR SJ:NOK SK:EUR SL:SLE SM:EUR \
    SN:XOF SO:SOS SR:SRD SS:SSP ST:STN SX:XCG SZ:SZL TC:USD TD:XAF TF:EUR TG:XOF TJ:TJS TK:NZD \
    TL:USD TM:TMT TN:TND TO:TOP TR:TRY TV:AUD TZ:TZS UA:UAH UG:UGX UY:UYU UZ:UZS VA:EUR VC:XCD \
    VG:USD VN:VND VU:VUV WF:XPF XK:EUR YT:EUR ZM:ZMW";

/// Languages with the region where each is most at home.
const LIKELY: &str = "ar:EG bg:BG bn:BD ca:ES cs:CZ cy:GB da:DK de:DE el:GR en:US es:ES et:EE eu:ES \
    fa:IR fi:FI fr:FR ga:IE gl:ES he:IL hi:IN hr:HR hu:HU id:ID is:IS it:IT ja:JP ko:KR lt:LT lv:LV \
    ms:MY mt:MT nb:NO nl:NL nn:NO no:NO pl:PL pt:BR ro:RO ru:RU sk:SK sl:SI sq:AL sr:RS sv:SE sw:TZ \
    ta:IN th:TH tl:PH tr:TR uk:UA ur:PK vi:VN zh:CN";

/// Region, area of the tz database, places in it: the zones most asked for.
const ZONES: &[(&str, &str, &str)] = &[
    ("AE", "Asia", "Dubai"),
    (
        "AR",
        "America",
        "Argentina/Buenos_Aires Argentina/Catamarca Argentina/Cordoba Argentina/Jujuy \
         Argentina/La_Rioja Argentina/Mendoza Argentina/Rio_Gallegos Argentina/Salta \
         Argentina/San_Juan Argentina/San_Luis Argentina/Tucuman Argentina/Ushuaia \
         Buenos_Aires",
    ),
    ("AT", "Europe", "Vienna"),
    ("AU", "Antarctica", "Macquarie"),
    (
        "AU",
        "Australia",
        "Adelaide Brisbane Broken_Hill Darwin Eucla Hobart Lindeman Lord_Howe Melbourne \
         Perth Sydney",
    ),
    ("BD", "Asia", "Dhaka"),
    ("BE", "Europe", "Brussels"),
    ("BG", "Europe", "Sofia"),
    (
        "BR",
        "America",
        "Araguaina Bahia Belem Boa_Vista Campo_Grande Cuiaba Eirunepe Fortaleza Maceio \
         Manaus Noronha Porto_Velho Recife Rio_Branco Santarem Sao_Paulo",
    ),
    (
        "CA",
        "America",
        "Atikokan Blanc-Sablon Cambridge_Bay Creston Dawson Dawson_Creek Edmonton \
         Fort_Nelson Glace_Bay Goose_Bay Halifax Inuvik Iqaluit Moncton Rankin_Inlet \
         Regina Resolute St_Johns Swift_Current Toronto Vancouver Whitehorse Winnipeg",
    ),
    ("CH", "Europe", "Zurich"),
    ("CL", "America", "Coyhaique Punta_Arenas Santiago"),
    ("CL", "Pacific", "Easter"),
    ("CN", "Asia", "Shanghai Urumqi"),
    ("CO", "America", "Bogota"),
    ("CR", "America", "Costa_Rica"),
    ("CY", "Asia", "Famagusta Nicosia"),
    ("CZ", "Europe", "Prague"),
    ("DE", "Europe", "Berlin Busingen"),
    ("DK", "Europe", "Copenhagen"),
    ("DO", "America", "Santo_Domingo"),
    ("EC", "America", "Guayaquil"),
    ("EC", "Pacific", "Galapagos"),
    ("EE", "Europe", "Tallinn"),
    ("EG", "Africa", "Cairo"),
    ("ES", "Africa", "Ceuta"),
    ("ES", "Atlantic", "Canary"),
    ("ES", "Europe", "Madrid"),
    ("FI", "Europe", "Helsinki"),
    ("FR", "Europe", "Paris"),
    ("GB", "Europe", "London"),
    ("GR", "Europe", "Athens"),
    ("GT", "America", "Guatemala"),
    ("HK", "Asia", "Hong_Kong"),
    ("HR", "Europe", "Zagreb"),
    ("HU", "Europe", "Budapest"),
    ("ID", "Asia", "Jakarta Jayapura Makassar Pontianak"),
    ("IE", "Europe", "Dublin"),
    ("IL", "Asia", "Jerusalem"),
    ("IN", "Asia", "Calcutta Kolkata"),
    ("IS", "Atlantic", "Reykjavik"),
    ("IT", "Europe", "Rome"),
    ("JM", "America", "Jamaica"),
    ("JP", "Asia", "Tokyo"),
    ("KE", "Africa", "Nairobi"),
    ("KR", "Asia", "Seoul"),
    ("LK", "Asia", "Colombo"),
    ("LT", "Europe", "Vilnius"),
    ("LU", "Europe", "Luxembourg"),
    ("LV", "Europe", "Riga"),
    ("MA", "Africa", "Casablanca"),
    ("MT", "Europe", "Malta"),
    (
        "MX",
        "America",
        "Bahia_Banderas Cancun Chihuahua Ciudad_Juarez Hermosillo Matamoros Mazatlan \
         Merida Mexico_City Monterrey Ojinaga Tijuana",
    ),
    ("MY", "Asia", "Kuala_Lumpur Kuching"),
    ("NG", "Africa", "Lagos"),
    ("NL", "Europe", "Amsterdam"),
    ("NO", "Europe", "Oslo"),
    ("NP", "Asia", "Kathmandu Katmandu"),
    ("NZ", "Pacific", "Auckland Chatham"),
    ("PE", "America", "Lima"),
    ("PH", "Asia", "Manila"),
    ("PK", "Asia", "Karachi"),
    ("PL", "Europe", "Warsaw"),
    ("PR", "America", "Puerto_Rico"),
    ("PT", "Atlantic", "Azores Madeira"),
    ("PT", "Europe", "Lisbon"),
    ("RO", "Europe", "Bucharest"),
    ("RS", "Europe", "Belgrade"),
    ("SA", "Asia", "Riyadh"),
    ("SE", "Europe", "Stockholm"),
    ("SG", "Asia", "Singapore"),
    ("SI", "Europe", "Ljubljana"),
    ("SK", "Europe", "Bratislava"),
    ("TH", "Asia", "Bangkok"),
    ("TR", "Europe", "Istanbul"),
    ("TW", "Asia", "Taipei"),
    ("UA", "Europe", "Kiev Kyiv Simferopol"),
    (
        "US",
        "America",
        "Adak Anchorage Boise Chicago Denver Detroit Indiana/Indianapolis Indiana/Knox \
         Indiana/Marengo Indiana/Petersburg Indiana/Tell_City Indiana/Vevay \
         Indiana/Vincennes Indiana/Winamac Indianapolis Juneau Kentucky/Louisville \
         Kentucky/Monticello Los_Angeles Louisville Menominee Metlakatla New_York Nome \
         North_Dakota/Beulah North_Dakota/Center North_Dakota/New_Salem Phoenix Sitka \
         Yakutat",
    ),
    ("US", "Pacific", "Honolulu"),
    ("UY", "America", "Montevideo"),
    ("VN", "Asia", "Ho_Chi_Minh Saigon"),
    ("ZA", "Africa", "Johannesburg"),
];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::measure::currency;

    #[track_caller]
    fn check(language: &str, zone: &str, want: Option<(&str, &str)>) {
        let got = Region::guess(language, zone).map(|region| (region.code(), region.currency()));
        assert_eq!(got, want, "{language} {zone}");
    }

    #[test]
    fn where_the_clock_is_goes_before_the_language() {
        check("en-US", "America/Toronto", Some(("CA", "CAD")));
        check("en-GB", "Europe/Berlin", Some(("DE", "EUR")));
        check("en", "America/Indiana/Knox", Some(("US", "USD")));
        check("hi", "Asia/Calcutta", Some(("IN", "INR")));
    }

    #[test]
    fn a_clock_that_says_nothing_leaves_the_language() {
        check("en-CA", "UTC", Some(("CA", "CAD")));
        check("pt_BR", "Etc/GMT+3", Some(("BR", "BRL")));
        check("zh-Hant-TW", "", Some(("TW", "TWD")));
        check("en-x-CA", "UTC", Some(("US", "USD")));
        check("da", "UTC", Some(("DK", "DKK")));
        check("es-419", "UTC", Some(("ES", "EUR")));
        check("xx", "Mars/Olympus", None);
        check("", "/", None);
    }

    #[test]
    fn every_region_has_a_currency_in_use() {
        for (_, regions) in WEEKS {
            for pair in regions.split_ascii_whitespace() {
                let (region, currency) = pair.split_once(':').expect(pair);
                assert!(region.len() == 2 && currency::known(currency), "{pair}");
                assert_eq!(Region::of(region).map(Region::currency), Some(currency), "{region} stands twice");
            }
        }
    }

    #[test]
    fn every_zone_and_language_leads_to_a_region() {
        for (region, area, places) in ZONES {
            for place in places.split_ascii_whitespace() {
                let found = Region::of_zone(&format!("{area}/{place}")).map(Region::code);
                assert_eq!(found, Some(*region), "{area}/{place}");
            }
        }
        for pair in LIKELY.split_ascii_whitespace() {
            assert!(pair.split_once(':').is_some_and(|(_, region)| Region::of(region).is_some()), "{pair}");
        }
    }
}
