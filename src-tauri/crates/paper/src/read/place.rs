//! In which currency and country a receipt was printed, by what stands on it.

use units::Currency;

use super::fold::{key, plain};
use super::page::{Line, Page};
use super::receipt::{Country, Field, Known, KnownShop, Sure, currency};
use super::words::{LANGUAGES, Role};
use super::zone::is_heading;

/// Signs and letters of currencies, folded, with their ISO 4217 codes. `$` and `kr` belong to several.
const SIGNS: &[(&str, &str)] = &[
    ("€", "EUR"),
    ("eur", "EUR"),
    ("euro", "EUR"),
    ("euros", "EUR"),
    ("£", "GBP"),
    ("gbp", "GBP"),
    ("usd", "USD"),
    ("us$", "USD"),
    ("chf", "CHF"),
    ("sfr", "CHF"),
    ("fr", "CHF"),
    ("zl", "PLN"),
    ("pln", "PLN"),
    ("kc", "CZK"),
    ("czk", "CZK"),
    ("sek", "SEK"),
    ("nok", "NOK"),
    ("dkk", "DKK"),
    ("huf", "HUF"),
    ("ft", "HUF"),
    ("ron", "RON"),
    ("lei", "RON"),
    ("bgn", "BGN"),
    ("cad", "CAD"),
    ("aud", "AUD"),
    ("nzd", "NZD"),
    ("jpy", "JPY"),
    ("try", "TRY"),
    ("₺", "TRY"),
    ("¥", "JPY"),
    ("uah", "UAH"),
    ("₴", "UAH"),
    ("isk", "ISK"),
    ("mxn", "MXN"),
];

/// Those of them that are no other word.
const COMMON: &[&str] = &["eur", "euro", "euros", "gbp", "usd", "chf", "sfr"];

/// Countries by what begins a VAT number (Council Directive 2006/112/EC, article 215; from memory), with the number
/// of signs behind it, and their currencies.
const COUNTRIES: &[(&str, std::ops::RangeInclusive<usize>, &str)] = &[
    ("DE", 9..=9, "EUR"),
    ("AT", 9..=9, "EUR"),
    ("FR", 11..=11, "EUR"),
    ("ES", 9..=9, "EUR"),
    ("IT", 11..=11, "EUR"),
    ("BE", 10..=10, "EUR"),
    ("NL", 12..=12, "EUR"),
    ("LU", 8..=8, "EUR"),
    ("PT", 9..=9, "EUR"),
    ("IE", 8..=9, "EUR"),
    ("GB", 9..=9, "GBP"),
    ("PL", 10..=10, "PLN"),
    ("CZ", 8..=10, "CZK"),
    ("SE", 12..=12, "SEK"),
    ("DK", 8..=8, "DKK"),
    ("FI", 8..=8, "EUR"),
    ("SK", 10..=10, "EUR"),
    ("SI", 8..=8, "EUR"),
    ("HU", 8..=8, "HUF"),
    ("RO", 2..=10, "RON"),
    ("HR", 11..=11, "EUR"),
    ("EE", 9..=9, "EUR"),
    ("LV", 11..=11, "EUR"),
    ("LT", 9..=12, "EUR"),
    ("BG", 9..=10, "EUR"),
    ("CH", 10..=10, "CHF"),
];

/// Whether this begins like a VAT number and has as many signs as one of that country.
pub(super) fn vat_country(number: &str) -> Option<Country> {
    let rest = if let Some(rest) = number.strip_prefix("CHE") {
        return (rest.len() >= 9 && rest.bytes().take(9).all(|b| b.is_ascii_digit()))
            .then(|| Country::new("CH"))?;
    } else {
        number.get(2..)?
    };
    let digits = rest.bytes().filter(u8::is_ascii_digit).count();
    let (code, ..) = COUNTRIES.iter().find(|(code, length, _)| {
        number.starts_with(code) && length.contains(&rest.len()) && digits + 2 >= rest.len()
    })?;
    Country::new(code)
}

/// What a receipt says about where it comes from.
pub(super) struct Place {
    /// The country, if anything printed or the shop itself says so.
    pub country: Option<Country>,
    /// The currency.
    pub currency: Option<Field<Currency>>,
    /// The language with most labels, as a column of the table.
    pub language: Option<usize>,
}

impl Place {
    /// Looks for currency, country and language; a known shop's country is certain.
    pub fn of(page: &Page, known: &Known<'_>, shop: Option<&KnownShop<'_>>) -> Place {
        let language = language(page);
        let printed = printed_currency(page, known);
        let by_number = page.lines.iter().find_map(country_by_number);
        let country = shop
            .and_then(|shop| shop.country)
            .or(by_number)
            .or_else(|| printed.as_ref().and_then(|field| country_by_currency(page, field.value)));
        let currency = printed.or_else(|| concluded(page, known, country, language));
        Place { country, currency, language }
    }

    /// Whether numbers of days are printed with the month first; `None` when nothing says.
    ///
    /// Of the countries whose receipts are read here only the United States do (Unicode CLDR, short form of days);
    /// Canada prints either, and so says nothing.
    pub fn month_first(&self) -> Option<bool> {
        match self.country.as_ref().map(Country::code) {
            Some("US" | "PH") => Some(true),
            Some("CA") => None,
            Some(_) => Some(false),
            None => self.by_currency().or_else(|| self.by_language()),
        }
    }

    /// The countries of the other languages print the day first. A dollar is none of theirs, so beside it a word or
    /// two that are spelt alike in several languages say nothing.
    fn by_language(&self) -> Option<bool> {
        let dollar = self.currency.is_some_and(|currency| currency.value.code() == "USD");
        self.language.filter(|language| *language > 0 && !dollar).map(|_| false)
    }

    /// The euro's countries all print the day first, and of the dollar's some do not.
    fn by_currency(&self) -> Option<bool> {
        let euro = self.currency.filter(|field| field.sure == Sure::Sure)?.value.code() == "EUR";
        euro.then_some(false)
    }
}

/// The language that most labels are in; labels that several languages share count for none.
fn language(page: &Page) -> Option<usize> {
    let mut votes = [0_usize; LANGUAGES];
    for label in page.lines.iter().flat_map(|line| &line.labels.all) {
        if label.languages.is_power_of_two() && label.at.len() > 2 {
            votes[usize::try_from(label.languages.trailing_zeros()).unwrap_or(0)] += 1;
        }
    }
    let best = (0..LANGUAGES).max_by_key(|language| (votes[*language], LANGUAGES - language))?;
    (votes[best] > 0).then_some(best)
}

/// The currency that is printed most often beside amounts, or in words that announce them.
fn printed_currency(page: &Page, known: &Known<'_>) -> Option<Field<Currency>> {
    let mut votes: Vec<(&'static str, usize, Field<Currency>)> = Vec::new();
    for (line, code, at) in
        page.lines.iter().flat_map(|line| signs(line, known).map(move |(code, at)| (line, code, at)))
    {
        let Ok(currency) = currency(code) else { continue };
        // The head of a table may have been printed for other countries as well.
        let weight = match () {
            () if is_heading(line) => 1,
            () if line.labels.has(Role::Total) || line.labels.has(Role::Sum) => 6,
            () => 2,
        };
        match votes.iter_mut().find(|vote| vote.0 == code) {
            Some(vote) => vote.1 += weight,
            None => votes.push((
                code,
                weight,
                Field { value: currency, sure: Sure::Likely, area: line.area(&at) },
            )),
        }
    }
    // Of equals the first printed wins.
    let most = votes.iter().map(|vote| vote.1).max()?;
    let all: usize = votes.iter().map(|vote| vote.1).sum();
    let (_, weight, mut field) = votes.into_iter().find(|vote| vote.1 == most)?;
    let agreed = weight >= 4 && weight * 4 >= all * 3;
    field.sure = if agreed { Sure::Sure } else { Sure::Likely };
    Some(field)
}

/// The signs of currencies on a line, as codes.
fn signs<'a>(
    line: &'a Line,
    known: &'a Known<'_>,
) -> impl Iterator<Item = (&'static str, std::ops::Range<usize>)> + 'a {
    let priced =
        line.amounts().next().is_some() || line.labels.has(Role::Total) || line.labels.has(Role::Sum);
    line.words.iter().filter_map(move |word| {
        let text = plain(&line.text(word.clone()));
        // What is left of `EUR12,50`, `12,50€`, `(EUR)`, `Fr.` without figures and stops.
        let bare: String = text.chars().filter(|c| c.is_alphabetic() || "€$£¥₺₴".contains(*c)).collect();
        let code = match ['€', '£', '$'].into_iter().find(|sign| text.contains(*sign)) {
            Some('€') => Some("EUR"),
            Some('£') => Some("GBP"),
            Some(_) if bare == "us$" => Some("USD"),
            Some(_) => Some(dollar(known)),
            None if bare == "kr" => krone(known),
            None => SIGNS.iter().find(|(sign, _)| *sign == bare).map(|(_, code)| *code),
        };
        // Short or rare ones are other words as well, and are a currency only beside an amount.
        let plain_enough =
            priced || COMMON.contains(&bare.as_str()) || !bare.chars().all(char::is_alphabetic);
        code.filter(|_| plain_enough).map(|code| (code, word.clone()))
    })
}

/// Whose dollar it is: the household's, or that of the United States.
fn dollar(known: &Known<'_>) -> &'static str {
    let own = known.currency.map(Currency::code);
    ["CAD", "AUD", "NZD", "MXN"].into_iter().find(|code| own == Some(code)).unwrap_or("USD")
}

/// Whose crown it is: only the household can say.
fn krone(known: &Known<'_>) -> Option<&'static str> {
    let own = known.currency.map(Currency::code);
    ["SEK", "NOK", "DKK", "ISK"].into_iter().find(|code| own == Some(code))
}

/// The country that a VAT number, a telephone number or an address of the web names.
fn country_by_number(line: &Line) -> Option<Country> {
    let words = || line.words.iter().map(|word| line.text(word.clone()));
    if line.labels.has(Role::TaxNumber) || line.labels.has(Role::Tax) {
        let joined: String =
            words().collect::<String>().chars().filter(char::is_ascii_alphanumeric).collect();
        let mut starts =
            joined.char_indices().map(|(at, _)| joined.get(at..).unwrap_or_default().to_ascii_uppercase());
        if let Some(country) = starts.find_map(|number| vat_country(&number)) {
            return Some(country);
        }
    }
    words().find_map(|word| by_dialling(&word).or_else(|| by_domain(&word))).or_else(|| by_address(line))
}

/// The two letters of a state, or of the capital's district, of the United States (USPS Publication 28, appendix B).
const STATES: &str = "AL AK AZ AR CA CO CT DE DC FL GA HI ID IL IN IA KS KY LA ME MD MA MI MN MS MO MT NE NV NH NJ NM NY NC ND OH \
                      OK OR PA RI SC SD TN TX UT VT VA WA WV WI WY";

/// A state with a postal code of the United States, `KS 00000`, at the end of a row without amounts.
fn by_address(line: &Line) -> Option<Country> {
    let us = line.words.windows(2).any(|pair| {
        let [state, code] = pair else { return false };
        let (state, code) = (line.text(state.clone()), line.text(code.clone()));
        let (zip, more) = code.split_once('-').unwrap_or((&code, ""));
        let digits = zip.len() == 5 && zip.bytes().chain(more.bytes()).all(|byte| byte.is_ascii_digit());
        digits && state.len() == 2 && STATES.split_whitespace().any(|known| known == state)
    });
    (us && line.amounts().next().is_none()).then(|| Country::new("US"))?
}

/// Country codes of ITU-T E.164.
fn by_dialling(word: &str) -> Option<Country> {
    const CODES: &[(&str, &str)] = &[
        ("+49", "DE"),
        ("+43", "AT"),
        ("+41", "CH"),
        ("+33", "FR"),
        ("+32", "BE"),
        ("+34", "ES"),
        ("+44", "GB"),
        ("+353", "IE"),
        ("+352", "LU"),
        ("+39", "IT"),
        ("+31", "NL"),
        ("+48", "PL"),
        ("+420", "CZ"),
        ("+46", "SE"),
        ("+45", "DK"),
        ("+47", "NO"),
        ("+351", "PT"),
    ];
    let bare = word.trim_start_matches('(');
    CODES.iter().find(|(code, _)| bare.starts_with(code)).and_then(|(_, country)| Country::new(country))
}

/// Domains of countries, ISO 3166-1 but for `.uk`.
fn by_domain(word: &str) -> Option<Country> {
    let word = plain(word);
    let word = word.trim_end_matches(|c: char| !c.is_alphanumeric());
    let (before, domain) = word.rsplit_once('.')?;
    let web = before.starts_with("www.") || before.contains('@') || before.starts_with("http");
    let country = match domain {
        "uk" => "GB",
        "de" | "at" | "ch" | "fr" | "be" | "es" | "ie" | "lu" | "it" | "nl" | "pl" | "cz" | "se" | "dk"
        | "no" | "pt" => domain,
        _ => return None,
    };
    web.then(|| Country::new(country))?
}

/// The country whose currency it is, where it is one country's. A dollar is that of the United States where a sales tax
/// is called so: other countries with dollars call theirs a tax on goods and services.
fn country_by_currency(page: &Page, currency: Currency) -> Option<Country> {
    match currency.code() {
        "EUR" => None,
        "USD" => (taxed(page, "sales tax") || taxed(page, "tax")).then(|| Country::new("US"))?,
        other => Country::new(other.get(..2)?),
    }
}

/// Whether a label of the page is this name of a tax.
fn taxed(page: &Page, name: &str) -> bool {
    let name = key(name);
    let labels = |line: &Line| line.labels.all.iter().any(|label| key(&line.text(label.at.clone())) == name);
    page.lines.iter().any(labels)
}

/// A currency that is not printed: the country's, else the household's, else the one that goes with the language.
fn concluded(
    page: &Page,
    known: &Known<'_>,
    country: Option<Country>,
    language: Option<usize>,
) -> Option<Field<Currency>> {
    let of_country = country.and_then(|country| match country.code() {
        "US" => Some("USD"),
        code => COUNTRIES.iter().find(|(known, ..)| *known == code).map(|(.., currency)| *currency),
    });
    let of_language = match language {
        Some(0) if taxed(page, "VAT") => "GBP",
        Some(0) | None if taxed(page, "sales tax") || taxed(page, "tax") => "USD",
        _ => "EUR",
    };
    let (value, sure) = match of_country.and_then(|code| currency(code).ok()).or(known.currency) {
        Some(value) => (value, Sure::Likely),
        None => (currency(of_language).ok()?, Sure::Doubtful),
    };
    Some(Field { value, sure, area: page.line(0)?.whole() })
}
