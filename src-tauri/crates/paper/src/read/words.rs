//! The words that a receipt prints beside its figures: one table, a row a meaning, a column a language.
//!
//! A fifth language is one more column in every row. Case, accents, signs and spaces do not count when a word is
//! looked up, so each is written here once, in the spelling of a dictionary; what is printed both with an umlaut
//! and without (`Rückgeld`, `RUECKGELD`) is written twice. Sources: common practice of the trade, from memory.
//!
//! Longer than 400 lines because it is one table, of which no row means anything to another.

/// How many languages the table knows: English, German, French, Spanish, in this order.
pub(super) const LANGUAGES: usize = 4;

/// What a word or a phrase on a receipt announces.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Role {
    /// What there is to pay, and nothing else.
    Total,
    /// What there is to pay, unless another word beside it says otherwise.
    Sum,
    /// A sum that is not yet the total.
    Subtotal,
    /// Before tax.
    Net,
    /// A tax on the sale.
    Tax,
    /// The number under which somebody is taxed or registered.
    TaxNumber,
    /// What was handed over or charged.
    Paid,
    /// What was handed back.
    Change,
    /// What is taken off.
    Discount,
    /// What was not spent, which is nobody's debt.
    Saved,
    /// How many things were bought.
    Count,
    /// The step to the smallest coin.
    Rounding,
    /// The head of a column.
    Heading,
    /// What kind of paper this is, or a greeting: never a shop's name.
    Title,
    /// The day of the sale.
    SaleDay,
    /// Some other day.
    OtherDay,
    /// A maker's or dealer's number of a part.
    Part,
    /// A number that only the shop knows an article by.
    Shelf,
    /// A number of anything but a part.
    OtherNumber,
    /// How much fuel.
    Volume,
    /// The price of one litre or gallon.
    UnitPrice,
    /// Which pump.
    Pump,
    /// Petrol.
    Petrol,
    /// Diesel.
    Diesel,
    /// Petrol that is mostly ethanol.
    Ethanol,
    /// Liquefied petroleum gas.
    Lpg,
    /// Natural gas.
    NaturalGas,
    /// The odometer reading of the day.
    Odometer,
    /// A reading that is still to come.
    NextReading,
    /// A standard whose grades look like numbers of parts.
    Grade,
    /// The legal form of a firm.
    LegalForm,
    /// A word that says nothing about the figure beside it.
    Filler,
    /// A word of the trade that is easily taken for a label.
    Plain,
}

/// One meaning, and what says so in each language.
pub(super) struct Meaning {
    /// What is announced.
    pub role: Role,
    /// The words, a column a language.
    pub says: [&'static [&'static str]; LANGUAGES],
}

const fn meaning(role: Role, says: [&'static [&'static str]; LANGUAGES]) -> Meaning {
    Meaning { role, says }
}

/// All meanings.
#[rustfmt::skip]
pub(super) const MEANINGS: &[Meaning] = &[
    meaning(Role::Total, [
        &["amount due", "balance due", "total due", "grand total", "total to pay", "to pay", "amount payable",
          "total payable", "invoice total", "total amount", "total incl VAT", "total inc VAT", "total including VAT",
          "total sale", "sale total", "fuel total", "total fuel", "total amount due", "amount to pay", "total price",
          "order total", "total charge", "sale amount", "total incl tax", "total with tax", "please pay",
          "gross total", "total gross", "gross amount", "total cost", "pump total", "fuel sale", "gas total"],
        &["zu zahlen", "Gesamtbetrag", "Gesamtsumme", "Rechnungsbetrag", "Endbetrag", "Endsumme", "Zahlbetrag",
          "Gesamtpreis", "zu bezahlen", "Total inkl MwSt", "Summe inkl MwSt", "Summe brutto", "Bruttobetrag",
          "Bruttosumme", "Gesamt brutto", "Gesamtbetrag brutto", "Rechnungssumme", "Rechnungstotal",
          "Zahlungsbetrag", "zahlbarer Betrag", "Kaufbetrag", "Total brutto", "Rechnungsendbetrag",
          "Gesamt inkl MwSt", "Gesamtbetrag inkl MwSt", "Endpreis", "Betrag brutto", "Total zu bezahlen",
          "Zu zahlender Betrag", "Tankbetrag", "Verkaufsbetrag", "Warenwert brutto", "Total inkl",
          "Gesamtbetrag inkl USt", "Summe inkl USt", "Gesamt inkl USt", "Brutto gesamt"],
        &["total TTC", "à payer", "net à payer", "total à payer", "montant TTC", "montant total", "reste à payer",
          "montant dû", "total dû", "net à payer TTC", "montant à payer", "total général", "montant total TTC",
          "somme à payer", "TTC à payer", "total net TTC", "prix total", "total facture", "montant réel",
          "total de la facture", "total T T C", "prix TTC", "total carburant", "total toutes taxes comprises"],
        &["total a pagar", "a pagar", "importe total", "total factura", "total IVA incluido", "importe a pagar",
          "total con IVA", "total IVA incl", "total compra", "total venta", "total ticket", "precio total",
          "total euros a pagar", "total general", "total importe", "importe factura", "total de la compra",
          "monto total", "total documento", "total operación", "líquido a pagar"],
    ]),
    meaning(Role::Sum, [
        &["total", "balance", "amount", "sale", "sum", "amt"],
        &["Summe", "Gesamt", "Betrag", "Total", "Insgesamt", "Preis", "SU", "brutto"],
        &["total", "montant", "somme", "TTC"],
        &["total", "importe", "suma", "monto"],
    ]),
    meaning(Role::Subtotal, [
        &["subtotal", "sub total", "sub tot", "subttl", "merchandise total", "goods total", "parts total", "total parts",
          "labour total", "total labour", "labor total", "total labor"],
        &["Zwischensumme", "Zwischentotal", "Zw Summe", "Teilsumme", "Warenwert", "Summe Teile", "Summe Arbeit",
          "Übertrag", "Zwsumme", "Summe Material"],
        &["sous total", "sous tot", "s total", "total pièces", "total main d'oeuvre", "total articles HT"],
        &["subtotal", "sub total", "total parcial", "suma parcial", "total piezas", "total mano de obra",
          "total recambios"],
    ]),
    meaning(Role::Net, [
        &["net", "net total", "total net", "net amount", "total ex VAT", "total excl VAT", "ex VAT", "excl VAT",
          "total excluding VAT", "total before tax", "taxable amount", "taxable", "net goods", "goods net",
          "net sale", "amount net", "total exc VAT", "net value", "vatable", "excluding VAT", "excl tax", "ex tax",
          "excluding tax", "before tax", "total excl tax", "total ex tax", "net of tax", "net of VAT", "exc VAT"],
        &["netto", "Nettobetrag", "Summe netto", "Netto gesamt", "Gesamt netto", "Nettosumme", "Total netto",
          "Nettoumsatz", "Netto Umsatz", "Total exkl MwSt", "exkl MwSt", "Netto Betrag", "Warenwert netto",
          "Gesamtbetrag netto", "Nettowert", "Betrag netto", "zzgl MwSt", "Total exkl", "ohne MwSt", "ohne USt",
          "exkl USt", "Summe ohne MwSt"],
        &["total HT", "montant HT", "net HT", "HT", "base HT", "total hors taxes", "hors taxes", "total H T", "total net HT",
          "prix HT", "base TVA", "montant hors taxe", "total net", "hors TVA", "total hors TVA"],
        &["base imponible", "base", "importe neto", "total neto", "neto", "base imp", "sin IVA", "total sin IVA",
          "base imponible total", "bruto", "total bruto", "importe base"],
    ]),
    meaning(Role::Tax, [
        &["VAT", "tax", "sales tax", "state tax", "local tax", "county tax", "city tax", "VAT amount", "tax amount",
          "total VAT", "total tax", "incl VAT", "inc VAT", "including VAT", "VAT total", "tax total", "GST", "of which VAT",
          "VAT included", "VAT content"],
        &["MwSt", "USt", "Mehrwertsteuer", "Umsatzsteuer", "Steuer", "MwSt Betrag", "Mwst Satz", "inkl MwSt",
          "enthaltene MwSt", "darin enthalten MwSt", "MWST total", "Steuerbetrag", "Steuer gesamt", "Summe MwSt",
          "zzgl USt", "inkl USt", "enthaltene Steuer", "enthält MwSt", "davon MwSt", "Gesamt MwSt", "plus MwSt",
          "Total MwSt", "USt Betrag", "Summe USt", "zuzüglich MwSt"],
        &["TVA", "dont TVA", "montant TVA", "total TVA", "TVA incluse", "T V A", "taxe", "taxes", "total taxes",
          "TVA comprise", "incl TVA", "taux TVA"],
        &["IVA", "cuota", "cuota IVA", "IVA incluido", "importe IVA", "total IVA", "impuesto", "impuestos", "I V A",
          "IVA incl", "total impuestos", "total cuota"],
    ]),
    meaning(Role::TaxNumber, [
        &["VAT no", "VAT reg", "VAT reg no", "VAT number", "VAT registration", "VAT registration no", "VAT ID",
          "tax ID", "company no", "company number", "company reg", "EIN", "registered in England", "GB VAT", "VAT Nr",
          "reg no", "co reg no", "registration no"],
        &["USt IdNr", "USt ID", "USt ID Nr", "UStId", "UStIdNr", "Steuernummer", "Steuer Nr", "St Nr", "StNr", "UID", "UID Nr",
          "MwSt Nr", "MWST Nummer", "CHE", "Handelsregister", "HRB", "ATU", "Amtsgericht", "FN", "Ust Nr"],
        &["N TVA", "TVA intracommunautaire", "TVA intra", "SIRET", "SIREN", "RCS", "N SIRET", "no TVA", "numéro TVA",
          "N TVA intra", "APE", "NAF", "num TVA", "capital", "TVA N", "code APE"],
        &["NIF", "CIF", "C I F", "N I F", "NIF IVA", "VAT ES", "DNI", "registro mercantil", "CIF NIF", "NIF CIF"],
    ]),
    meaning(Role::Paid, [
        &["cash", "card", "paid", "tendered", "amount tendered", "cash tendered", "debit card", "credit card", "credit",
          "debit", "Visa", "Mastercard", "contactless", "card payment", "total paid", "amount paid", "payment",
          "paid by card", "Visa debit", "Visa credit", "card sale", "cash paid", "charged", "Amex", "Maestro",
          "paid in cash", "card total", "charge", "chip", "debit sale", "credit sale", "bank card", "cheque"],
        &["bar", "gegeben", "bezahlt", "Karte", "EC Karte", "Kartenzahlung", "EC Cash", "girocard", "Barzahlung",
          "Bargeld", "Kreditkarte", "gegeben bar", "bar gegeben", "Kartenbetrag", "Zahlung", "Debitkarte", "erhalten",
          "bar bezahlt", "Bar EUR", "Zahlbetrag Karte", "bargeldlos", "Karte kontaktlos", "mit Karte", "Zahlung Karte",
          "Bar erhalten", "Zahlung bar", "Bezahlung", "EC", "Zahlungsart", "TWINT"],
        &["carte bancaire", "CB", "carte bleue", "carte", "espèces", "payé", "règlement", "reçu", "montant reçu",
          "paiement", "carte sans contact", "sans contact", "paiement CB", "paiement carte", "payé par carte", "réglé",
          "chèque", "total payé", "montant CB", "espèces reçues", "CB sans contact", "payé CB", "règlement CB"],
        &["efectivo", "tarjeta", "pagado", "entregado", "entrega", "tarjeta crédito", "tarjeta débito", "recibido",
          "pago con tarjeta", "pago tarjeta", "pago", "contado", "tarjeta bancaria", "importe entregado", "su entrega",
          "total pagado", "pago en efectivo", "entregado efectivo", "tarjeta de crédito", "tarjeta de débito", "cobrado"],
    ]),
    meaning(Role::Change, [
        &["change", "change due", "your change", "cash back", "change given", "cash change"],
        &["Rückgeld", "Rueckgeld", "zurück", "zurueck", "Wechselgeld", "Retourgeld", "Rückgabe", "Rückgeld bar",
          "zurück bar", "Herausgeld", "Rückgeld EUR"],
        &["rendu", "monnaie", "monnaie rendue", "rendu monnaie", "à rendre", "rendu espèces", "rendu sur espèces"],
        &["cambio", "a devolver", "su cambio", "vuelta", "devolución", "cambio efectivo", "vuelto"],
    ]),
    meaning(Role::Discount, [
        &["discount", "rebate", "coupon", "less discount", "trade discount", "promo", "voucher", "price reduction"],
        &["Rabatt", "Nachlass", "Skonto", "Gutschein", "Preisnachlass", "Aktion", "Kundenrabatt", "Sofortrabatt"],
        &["remise", "réduction", "rabais", "bon d'achat", "escompte", "ristourne", "remise client"],
        &["descuento", "dto", "rebaja", "cupón", "vale", "bonificación", "dto cliente"],
    ]),
    meaning(Role::Saved, [
        &["you saved", "total savings", "savings", "your savings", "points", "total discount", "points earned", "loyalty points",
          "points balance", "you earned", "total saved"],
        &["Sie sparen", "gespart", "Ersparnis", "Punkte", "Punktestand", "Treuepunkte", "Summe Rabatt", "Rabatt gesamt",
          "Sie haben gespart", "Bonuspunkte", "Gesamtrabatt"],
        &["vous économisez", "économie", "économies", "points", "points fidélité", "total remise", "total remises",
          "avantage", "total économies"],
        &["ha ahorrado", "ahorro", "puntos", "total descuento", "usted ahorra", "total dto", "total descuentos"],
    ]),
    meaning(Role::Count, [
        &["total items", "items", "no of items", "number of items", "items sold", "item count", "total qty", "total quantity",
          "total units", "articles", "no items", "pieces", "total litres", "total gallons", "total volume"],
        &["Anzahl Artikel", "Artikelanzahl", "Anzahl Positionen", "Posten", "Positionen", "Stückzahl", "Anzahl Teile",
          "Gesamtmenge", "Artikel gesamt", "Summe Artikel", "Summe Stück", "Summe Liter"],
        &["nombre d'articles", "nb articles", "nbre articles", "total articles", "nb d'articles", "nb art",
          "nombre de pièces", "total quantité", "total litres"],
        &["total artículos", "artículos", "n artículos", "núm artículos", "unidades", "total unidades", "total uds",
          "líneas", "total litros"],
    ]),
    meaning(Role::Rounding, [
        &["rounding", "rounding adj", "cash rounding"],
        &["Rundung", "Rundungsdifferenz", "Rundungsausgleich"],
        &["arrondi", "différence d'arrondi"],
        &["redondeo"],
    ]),
    meaning(Role::Heading, [
        &["qty", "quantity", "price", "description", "unit price", "each", "line total", "unit", "item description",
          "product", "u price", "price each", "disc", "VAT rate", "ext price", "extended", "ext"],
        &["Menge", "Anzahl", "Einzelpreis", "Bezeichnung", "Pos", "Einheit", "Artikelbezeichnung", "E Preis", "G Preis",
          "Stückpreis", "ME", "EP", "GP", "Stk", "Beschreibung", "Ges Preis", "Leistung", "Anz", "Einzel", "VK", "St Preis"],
        &["qté", "quantité", "désignation", "prix unitaire", "P U", "PU", "prix", "PU HT", "PU TTC", "libellé", "qte",
          "description", "produit", "P U TTC", "P U HT", "prix unit"],
        &["cant", "cantidad", "descripción", "precio", "P unit", "precio unitario", "uds", "concepto", "denominación",
          "precio ud", "pvp", "P V P", "ud", "producto", "unid"],
    ]),
    meaning(Role::Title, [
        &["receipt", "invoice", "sales receipt", "tax invoice", "VAT invoice", "VAT receipt", "copy", "duplicate", "welcome",
          "thank you", "customer copy", "original", "cash sale", "sales invoice", "merchant copy", "proof of purchase",
          "till receipt", "fuel receipt", "welcome to", "thank you for your custom", "thank you for shopping", "bill",
          "please keep your receipt", "customer receipt", "page", "statement", "credit note", "quote", "sales slip"],
        &["Rechnung", "Quittung", "Kassenbon", "Beleg", "Kassenbeleg", "Barverkauf", "Kopie", "Willkommen", "Original",
          "Kundenbeleg", "Lieferschein", "Herzlich willkommen", "Verkaufsbeleg", "Kassenzettel", "Vielen Dank",
          "vielen Dank für Ihren Einkauf", "Händlerbeleg", "Tankbeleg", "Tankquittung", "Barrechnung", "Seite", "Zweitschrift",
          "Duplikat", "Kaufbeleg", "Kundenkopie", "Es bediente Sie", "Bon", "Angebot", "Danke für Ihren Einkauf",
          "Kassabon", "Auf Wiedersehen", "Danke", "Rechnung Quittung"],
        &["facture", "ticket de caisse", "reçu client", "bienvenue", "duplicata", "merci", "ticket", "ticket client", "bon",
          "merci de votre visite", "quittance", "merci de votre confiance", "justificatif", "bon de livraison", "à bientôt",
          "copie", "ticket carburant", "reçu carburant", "facture acquittée"],
        &["factura", "factura simplificada", "ticket de compra", "recibo", "bienvenido", "bienvenidos", "gracias",
          "gracias por su compra", "copia", "copia cliente", "gracias por su visita", "original cliente", "albarán",
          "justificante", "comprobante", "tique", "duplicado"],
    ]),
    meaning(Role::SaleDay, [
        &["date", "sale date", "date of sale", "invoice date", "receipt date", "transaction date", "tax point", "purchase date",
          "date of purchase", "tax point date", "date time", "sold", "date of issue", "issue date", "trans date"],
        &["Datum", "Rechnungsdatum", "Belegdatum", "Verkaufsdatum", "Kaufdatum", "Datum Uhrzeit", "Ausstellungsdatum",
          "Belegdat", "Rechnung vom", "vom", "Rg Datum", "Re Datum", "Datum Zeit", "Bondatum"],
        &["date", "date facture", "date de facture", "émis le", "date d'achat", "date de vente", "le", "date du ticket",
          "date de facturation", "facture du", "date heure", "date d'émission", "en date du", "vendu le"],
        &["fecha", "fecha factura", "fecha de emisión", "fecha de compra", "fecha venta", "fecha emisión", "fecha hora",
          "fecha de venta", "fecha de factura", "fecha operación", "fecha expedición"],
    ]),
    meaning(Role::OtherDay, [
        &["due", "due date", "payment due", "warranty until", "warranty", "valid until", "expires", "expiry", "expiry date",
          "return by", "returns until", "returns accepted until", "delivery date", "order date", "ordered", "printed",
          "printed on", "next service", "MOT due", "next MOT", "guarantee until", "best before", "delivered", "exp",
          "pay by", "valid to", "until", "since", "established", "guarantee", "date of birth", "reprint", "shipped",
          "ship date", "valid from", "refund until", "exchange by", "date due", "payable by", "print date",
          "first registered", "registered", "offer ends", "by"],
        &["fällig", "fällig am", "zahlbar bis", "Garantie bis", "gültig bis", "Rückgabe bis", "Umtausch bis", "Lieferdatum",
          "Bestelldatum", "gedruckt", "gedruckt am", "Druckdatum", "nächster Service", "nächste HU", "HU bis", "seit",
          "Gewährleistung bis", "Liefertermin", "Auftragsdatum", "bis", "Fälligkeit", "Zahlungsziel", "faellig",
          "faellig am", "Fälligkeitsdatum", "Garantie", "Erstzulassung", "EZ", "geliefert am", "bestellt am", "gültig ab",
          "spätestens", "Valuta", "Nachdruck", "Gewährleistung", "Leistungszeitraum", "Umtausch innerhalb",
          "zahlbar", "einlösbar bis", "Stand", "gueltig bis", "Rueckgabe bis"],
        &["échéance", "date d'échéance", "garantie jusqu'au", "valable jusqu'au", "échange jusqu'au", "date de livraison",
          "date de commande", "imprimé le", "imprimé", "prochain entretien", "depuis", "jusqu'au", "retour avant le",
          "retour jusqu'au", "garantie", "livré le", "commandé le", "mise en circulation", "à régler avant le",
          "avant le", "prochain contrôle technique", "édité le", "date limite", "expire le", "valide jusqu'au"],
        &["vencimiento", "vence", "fecha de vencimiento", "garantía hasta", "válido hasta", "fecha de entrega",
          "fecha pedido", "impreso", "impreso el", "próxima revisión", "desde", "devoluciones hasta", "cambios hasta",
          "caduca", "caducidad", "garantía", "próxima ITV", "hasta", "fecha de pedido", "fecha de caducidad",
          "fecha vencimiento", "devolución hasta", "fecha matriculación", "fecha entrega"],
    ]),
    meaning(Role::Part, [
        &["part no", "part number", "part", "part num", "P N", "PN", "item no", "item number", "item", "MPN", "mfr no", "mfg no", "OE", "OEM",
          "OE no", "OE number", "OEM no", "ref", "catalogue no", "cat no", "product code", "stock code", "part code",
          "item code", "model no", "mfr part no", "manufacturer no", "product no", "article no", "part ref", "maker no",
          "part nr", "catalog no", "code", "model", "mfr", "OEM number", "replaces", "art no"],
        &["Art", "Art Nr", "Artikel Nr", "ArtikelNr", "ArtNr", "Artikelnummer", "Teile Nr", "TeileNr", "Teilenummer", "OE Nr", "OE Nummer",
          "OEN", "Hersteller Nr", "Herstellernummer", "Best Nr", "Bestell Nr", "Bestellnummer", "Typ", "Ersatzteilnummer",
          "Original Nr", "Katalog Nr", "Teil Nr", "Sach Nr", "Sachnummer", "Artikel", "Mat Nr", "Materialnummer",
          "Artikelcode", "Vergleichsnummer", "Art Nummer", "Herst Nr", "Ersatzteil Nr", "OEM Nr", "ET Nr", "Teilenr"],
        &["réf", "référence", "réf OE", "code article", "n pièce", "n de pièce", "réf article", "réf constructeur",
          "réf fabricant", "numéro de pièce", "réf fournisseur", "code produit", "no pièce", "réf origine", "n article",
          "réf pièce", "réf produit", "code art", "no article", "no de pièce", "n OE"],
        &["referencia", "refer", "código", "cód", "cod", "código artículo", "ref OE", "n pieza", "número de pieza",
          "cód artículo", "ref fabricante", "código producto", "núm pieza", "ref pieza", "artículo", "ref artículo",
          "n de pieza", "ref original", "código de artículo", "cod art"],
    ]),
    meaning(Role::Shelf, [
        &["SKU", "stock no", "stock number"],
        &["Lager Nr", "WGR", "Warengruppe"],
        &["code rayon", "rayon"],
        &["cód interno", "SKU artículo"],
    ]),
    meaning(Role::OtherNumber, [
        &["receipt no", "invoice no", "invoice number", "till", "till no", "register", "reg", "terminal", "terminal ID", "TID", "MID",
          "auth", "auth code", "authorisation", "approval", "approval code", "trans", "trans no", "transaction",
          "transaction no", "customer no", "customer", "account", "account no", "cashier", "operator", "tel", "phone",
          "fax", "telephone", "mobile", "IBAN", "BIC", "SWIFT", "sort code", "VIN", "chassis", "plate", "licence plate", "license plate",
          "order no", "order number", "order", "job no", "job card", "store", "store no", "branch", "AID", "card no",
          "card number", "account number", "served by", "barcode", "EAN", "GTIN", "UPC", "PLU", "receipt", "receipt number",
          "invoice", "trace", "batch", "serial", "serial no", "membership", "member", "member no", "delivery note", "PO", "PO no",
          "quote no", "ref no", "reference no", "auth no", "document no", "doc no", "ticket no", "slip no", "site no",
          "station no", "vehicle", "vehicle reg", "registration", "your ref", "our ref", "payment ref", "seq no",
          "helpline", "customer service", "zip", "suite", "PO box", "route", "www", "http", "email", "e mail", "loyalty card",
          "loyalty no", "merchant", "merchant ID", "app", "cryptogram", "TVR", "TSI", "host", "stan", "transaction ID",
          "auth ref", "invoice ref", "merchant no", "site", "bay", "lot", "bin", "aisle"],
        &["Bon Nr", "BonNr", "Beleg Nr", "BelegNr", "Belegnummer", "Rechnungs Nr", "Rechnung Nr", "Rechnungsnummer", "Kasse",
          "Kassen Nr", "Kd Nr", "KdNr", "Kunden Nr", "KundenNr", "Kundennummer", "Kunde", "Bediener", "Kassierer", "Telefon",
          "Terminal ID", "TA Nr", "TANr", "Trace Nr", "TSE", "TSE Transaktion", "Signatur", "Signaturzähler", "Seriennummer", "Konto",
          "Kontonummer", "BLZ", "Fahrgestellnummer", "Fahrgestell Nr", "FIN", "Kennzeichen", "Filiale", "Markt",
          "Auftrag", "Auftrags Nr", "Auftragsnummer", "Lieferschein Nr", "Genehmigungs Nr", "Autorisierung",
          "Kartennummer", "Karten Nr", "Vorgang", "Vorgangs Nr", "Transaktion", "Kundenkarte", "Verkäufer", "Bestellung",
          "Mitarbeiter", "Schlüssel Nr", "Re Nr", "Rg Nr", "Bar Code", "VU Nr", "Gläubiger", "Hotline", "Tankstelle Nr",
          "Station", "Amtl Kennzeichen", "Beleg", "Transaktionsnummer", "Service Tel", "Str", "Postfach", "Ihre Kundennummer",
          "Chargen Nr", "Charge", "Markt Nr", "Gen Nr", "Kassen ID", "Stations Nr", "Regal", "Fach", "Lagerplatz"],
        &["n facture", "facture n", "no facture", "n ticket", "caisse", "n client", "client", "code client", "vendeur",
          "tél", "téléphone", "n commande", "commande", "n autorisation", "autorisation", "opérateur", "magasin",
          "transaction", "n transaction", "compte", "code barres", "immatriculation", "n série", "châssis", "n bon",
          "hôtesse", "caissier", "caissière", "numéro", "ticket n", "facture no", "no client", "n carte", "commerçant",
          "numéro de facture", "numéro client", "n de facture", "n auto", "no ticket", "BP", "cedex", "emplacement",
          "n contrat", "numéro de ticket", "n TPE", "immat", "carte fidélité", "no auto", "no carte"],
        &["n factura", "factura n", "núm factura", "caja", "cliente", "n cliente", "cajero", "vendedor", "teléfono", "tfno", "telf", "telef",
          "pedido", "n pedido", "autorización", "n operación", "operación", "matrícula", "bastidor", "tienda", "comercio",
          "cuenta", "código de barras", "código cliente", "cód cliente", "n ticket", "número de factura", "núm ticket",
          "operador", "dependiente", "n autorización", "ticket", "factura simplificada n", "n serie", "surtidor n",
          "cod postal", "apartado", "tarjeta n", "n tarjeta", "doc", "atendido por", "le atendió", "núm operación",
          "número de ticket", "número", "ARC", "núm pedido", "ubicación"],
    ]),
    meaning(Role::Volume, [
        &["litres", "liters", "volume", "gallons", "gals", "qty litres", "fuel volume"],
        &["Liter", "Volumen", "Menge Liter", "Menge in Liter", "Getankte Menge", "Abgabemenge"],
        &["volume", "litres", "quantité litres", "quantité servie", "volume servi"],
        &["litros", "volumen", "cantidad litros", "cant litros", "volumen servido"],
    ]),
    meaning(Role::UnitPrice, [
        &["price per litre", "price per liter", "price litre", "price gal", "price gallon", "price per gallon", "PPL", "PPG", "PPU",
          "unit price", "price L", "per litre", "pence per litre", "price per gal", "price G", "price litr", "cost per litre",
          "p l", "p litre", "per gallon", "pump price"],
        &["Preis je Liter", "Literpreis", "Preis Liter", "Preis pro Liter", "Einzelpreis", "EUR L", "EUR Liter", "Preis L", "CHF L",
          "Grundpreis", "je Liter", "EUR pro Liter", "Preis je L", "EUR je Liter"],
        &["prix au litre", "prix litre", "prix unitaire", "prix L", "prix du litre", "PU", "prix unit", "EUR litre", "P U"],
        &["precio litro", "precio por litro", "precio L", "precio unitario", "EUR litro", "precio unit", "P unitario", "PVP litro"],
    ]),
    meaning(Role::Pump, [
        &["pump", "pump no", "pump number", "nozzle", "dispenser", "pump nr"],
        &["Säule", "Saeule", "Zapfsäule", "Zapfsaeule", "Zapfpunkt", "ZP", "Säulen Nr", "Säule Nr", "Zapfpunkt Nr", "Zp Nr",
          "Zapfs", "Saulen Nr", "Zapfhahn"],
        &["pompe", "pompe n", "n pompe", "pistolet", "borne", "pompe no"],
        &["surtidor", "bomba", "manguera", "n surtidor", "boca", "poste"],
    ]),
    meaning(Role::Petrol, [
        &["unleaded", "premium unleaded", "super unleaded", "regular unleaded", "petrol", "gasoline", "regular", "midgrade",
          "unleaded regular", "plus unleaded", "ULP", "E5", "E10", "unleaded 95", "unleaded plus", "regular unl",
          "unlead", "prem unleaded", "supreme unleaded", "super unl", "unleaded E10", "unleaded E5", "unleaded petrol"],
        &["Super", "Super E5", "Super E10", "Super Plus", "SuperPlus", "Benzin", "Bleifrei", "Super bleifrei", "Super 95",
          "Bleifrei 95", "Bleifrei 98", "Normalbenzin", "Super 98", "Eurosuper", "Super Benzin", "Ottokraftstoff",
          "Super Plus 98", "Superbenzin"],
        &["SP95", "SP98", "SP95 E10", "sans plomb", "sans plomb 95", "sans plomb 98", "essence", "SP 95", "SP 98", "super 95",
          "SP95E10", "essence 95", "super sans plomb", "super 98", "SP 95 E10", "sans plomb 95 E10"],
        &["sin plomo", "sin plomo 95", "gasolina", "gasolina 95", "gasolina 98", "gasolina sin plomo", "sin plomo 98",
          "S P 95", "SP95", "gasolina 95 E5", "gasolina 98 E5", "gasolina sin plomo 95"],
    ]),
    meaning(Role::Diesel, [
        &["diesel", "ultra low sulphur diesel", "ULSD", "DERV", "premium diesel", "auto diesel", "diesel B7", "road diesel"],
        &["Diesel", "Diesel B7", "Premium Diesel", "Dieselkraftstoff", "HVO100", "HVO", "B7", "Diesel Premium"],
        &["gazole", "gasoil", "diesel", "gazole B7", "gas oil", "gazole premium", "diesel premium"],
        &["gasóleo", "gasóleo A", "gasoil", "diésel", "gasóleo plus", "gasóleo A e", "diesel e", "gasóleo premium"],
    ]),
    meaning(Role::Ethanol, [
        &["E85", "bioethanol"],
        &["E85", "Bioethanol"],
        &["superéthanol", "E85", "superéthanol E85", "bioéthanol"],
        &["bioetanol", "E85"],
    ]),
    meaning(Role::Lpg, [
        &["LPG", "autogas", "auto LPG", "propane"],
        &["Autogas", "LPG", "Flüssiggas", "Autogas LPG"],
        &["GPL", "GPLc", "gaz de pétrole"],
        &["GLP", "autogás", "auto gas"],
    ]),
    meaning(Role::NaturalGas, [
        &["CNG", "natural gas", "LNG"],
        &["Erdgas", "CNG", "Erdgas H", "Erdgas L"],
        &["GNV", "gaz naturel", "bioGNV"],
        &["GNC", "gas natural", "GNL"],
    ]),
    meaning(Role::Odometer, [
        &["mileage", "odometer", "odo", "odometer reading", "miles", "current mileage", "mileage in", "speedo", "mileage at service",
          "vehicle mileage", "recorded mileage", "odometer in"],
        &["km Stand", "kmStand", "Kilometerstand", "Tachostand", "Laufleistung", "km Stand aktuell", "aktueller Kilometerstand",
          "Kilometer", "KM Std", "Zählerstand", "Zaehlerstand", "km"],
        &["kilométrage", "kilomètres", "compteur", "km compteur", "kms", "relevé compteur", "kilométrage compteur",
          "kilométrage actuel", "km véhicule"],
        &["kilometraje", "kilómetros", "kms", "cuentakilómetros", "km actuales", "kilómetros actuales", "lectura km", "km vehículo"],
    ]),
    meaning(Role::NextReading, [
        &["next service", "next service at", "next service due", "next oil change", "next change", "service due at", "due at",
          "next mileage", "next due", "warranty miles", "next service mileage"],
        &["nächster Service", "nächster Ölwechsel", "nächste Inspektion", "nächster Service bei", "nächste Wartung",
          "Service fällig bei", "naechster Service", "naechster Oelwechsel", "nächster Kilometerstand", "fällig bei"],
        &["prochain entretien", "prochaine vidange", "prochaine révision", "prochain entretien à", "prochain kilométrage"],
        &["próxima revisión", "próximo cambio", "próximo cambio de aceite", "próximo servicio", "próximo mantenimiento"],
    ]),
    meaning(Role::Grade, [
        &["ACEA", "API", "SAE", "DOT", "JASO", "ILSAC", "ISO", "EN", "DIN", "UN", "approval", "spec", "ECE", "ASTM", "size", "tyre"],
        &["Freigabe", "Norm", "Spezifikation", "nach", "Größe", "Reifen"],
        &["norme", "homologation", "spécification", "taille", "pneu"],
        &["norma", "especificación", "homologación", "medida", "neumático"],
    ]),
    meaning(Role::LegalForm, [
        &["Ltd", "Limited", "PLC", "Inc", "LLC", "Corp", "LLP", "Co", "L L C"],
        &["GmbH", "AG", "KG", "OHG", "e K", "UG", "GbR", "GmbH Co KG", "GesmbH", "Ges m b H", "Inh", "SE", "OG"],
        &["SARL", "SAS", "EURL", "SNC", "SASU", "S A R L", "Sàrl", "SRL", "SPRL", "S A S", "Ets"],
        &["S L", "SL", "SLU", "S A", "S L U", "S Coop", "SAU", "C B", "Hnos", "SLL"],
    ]),
    meaning(Role::Filler, [
        &["incl", "inc", "including", "included", "of", "the", "in", "by", "at", "on", "for", "your", "and", "rate", "pay", "EUR", "GBP",
          "USD", "CHF", "euro", "euros", "pounds", "dollars", "thank", "you", "excl", "each", "no", "to", "with", "total of",
          "ending", "chip read", "swipe", "PIN verified", "approved", "today", "is", "sterling"],
        &["inkl", "inklusive", "enthalten", "darin", "enthält", "davon", "von", "auf", "in", "der", "die", "das", "Ihr", "Ihre",
          "EUR", "Euro", "exkl", "zzgl", "Satz", "aus", "und", "mit", "sind", "im", "für", "gesetzl", "Fr", "SFr", "per",
          "mal", "genehmigt", "autorisiert", "gesetzliche", "beträgt", "Franken"],
        &["dont", "inclus", "incluse", "comprise", "compris", "de", "du", "des", "la", "le", "les", "en", "par", "taux", "sur", "votre",
          "EUR", "euros", "au", "à", "l", "d", "et", "pour", "vos"],
        &["incluido", "incluida", "incl", "de", "del", "la", "el", "los", "en", "con", "por", "su", "EUR", "euros", "tipo", "y", "al",
          "sobre", "aprobada"],
    ]),
    meaning(Role::Plain, [
        &["filter", "filters", "oil filter", "oil", "air", "fuel filter", "oil change", "wheel balance", "wheel balancing", "cable", "brake pads", "set",
          "kit", "pad", "cap", "lamp", "bulb", "belt", "plug", "disc brake", "disk", "diesel filter", "petrol filter",
          "diesel additive", "fuel additive", "petrol can", "fuel cap", "tax disc", "card holder", "credit note",
          "super glue", "litre can", "liter can", "pump seal", "water pump", "fuel pump", "oil pump", "washer pump",
          "foot pump", "part worn", "diesel engine", "diesel treatment", "petrol treatment", "fuel treatment"],
        &["Filter", "Öl", "Ölfilter", "Luftfilter", "Ölwechsel", "Räder wechseln", "Satz Bremsbeläge", "Wasserpumpe", "Ölpumpe",
          "Kraftstoffpumpe", "Dieselfilter", "Diesel Filter", "Diesel Additiv", "Benzinkanister", "Benzinfilter", "Superkleber",
          "Kraftstofffilter", "Bremsbelag", "Diesel Zusatz", "Benzin Zusatz", "Benzinpumpe", "Dieselmotor"],
        &["filtre", "filtres", "filtre à huile", "huile", "vidange", "courroie", "filtre gazole", "filtre à gazole",
          "filtre gasoil", "additif diesel", "filtre essence", "pompe à eau", "pompe à huile", "bidon", "additif gazole",
          "additif essence", "filtre à gasoil", "filtre diesel", "filtre à essence", "pompe à carburant", "huile diesel",
          "carte grise", "pompe à essence", "changement", "remplacement", "échange standard"],
        &["filtro", "filtros", "filtro de aceite", "aceite", "cambio de aceite", "cambio aceite", "correa", "filtro gasoil",
          "filtro de gasoil", "filtro gasóleo", "filtro de gasóleo", "aditivo diesel", "bomba de agua", "bomba de aceite",
          "filtro combustible", "cambio de filtro", "cambio filtro", "filtro diesel", "aditivo gasolina", "bomba de gasolina",
          "aditivo gasoil", "filtro gasolina", "bomba de combustible", "cambio neumáticos", "cambio de neumáticos"],
    ]),
];

/// The names of the months, January first, a column a language: the full name and the abbreviations in use.
#[rustfmt::skip]
pub(super) const MONTHS: [[&[&str]; LANGUAGES]; 12] = [
    [&["january", "jan"], &["januar", "jan", "jänner", "jän"], &["janvier", "janv", "jan"], &["enero", "ene"]],
    [&["february", "feb"], &["februar", "feb", "feber"], &["février", "févr", "fév"], &["febrero", "feb"]],
    [&["march", "mar"], &["märz", "mär", "mrz", "maerz"], &["mars", "mar"], &["marzo", "mar"]],
    [&["april", "apr"], &["april", "apr"], &["avril", "avr"], &["abril", "abr"]],
    [&["may"], &["mai"], &["mai"], &["mayo", "may"]],
    [&["june", "jun"], &["juni", "jun"], &["juin"], &["junio", "jun"]],
    [&["july", "jul"], &["juli", "jul"], &["juillet", "juil"], &["julio", "jul"]],
    [&["august", "aug"], &["august", "aug"], &["août", "aou"], &["agosto", "ago"]],
    [&["september", "sept", "sep"], &["september", "sept", "sep"], &["septembre", "sept"], &["septiembre", "setiembre", "sep", "sept", "set"]],
    [&["october", "oct"], &["oktober", "okt"], &["octobre", "oct"], &["octubre", "oct"]],
    [&["november", "nov"], &["november", "nov"], &["novembre", "nov"], &["noviembre", "nov"]],
    [&["december", "dec"], &["dezember", "dez"], &["décembre", "déc"], &["diciembre", "dic"]],
];

/// What counts pieces, litres and the like behind a quantity, folded.
pub(super) const PIECES: &[&str] = &[
    "st", "stk", "stck", "stueck", "stuck", "pc", "pcs", "pce", "pz", "pza", "u", "ud", "uds", "un", "unid",
    "ea", "each", "x", "pk",
];
/// Sets.
pub(super) const SETS: &[&str] =
    &["set", "sets", "satz", "kit", "jeu", "juego", "jgo", "paar", "pair", "paire", "par"];
/// Litres.
pub(super) const LITRES: &[&str] =
    &["l", "lt", "ltr", "ltrs", "lit", "liter", "liters", "litre", "litres", "litro", "litros", "lts"];
/// Gallons.
pub(super) const GALLONS: &[&str] = &["gal", "gals", "gallon", "gallons", "g", "galones"];
/// Hours, in which work is counted.
pub(super) const HOURS: &[&str] =
    &["h", "hr", "hrs", "hour", "hours", "std", "stdn", "heure", "heures", "hora", "horas"];
/// Kilograms.
pub(super) const KILOGRAMS: &[&str] = &["kg", "kgs", "kilo"];
/// Metres.
pub(super) const METRES: &[&str] = &["m", "mtr", "meter", "metre", "metro"];
/// Kilometres.
pub(super) const KILOMETRES: &[&str] = &["km", "kms", "kilometer", "kilometre", "kilometres", "kilometros"];
/// Miles.
pub(super) const MILES: &[&str] = &["mi", "mls", "mile", "miles"];
/// What measures a thing and no money, besides the units above: sizes, powers, capacities.
pub(super) const SIZES: &[&str] =
    &["mm", "cm", "ml", "cl", "v", "w", "ah", "nm", "psi", "kw", "hp", "cc", "oz", "qt", "ccm", "wh", "ft"];
