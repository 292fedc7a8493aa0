"""The words that stand on receipts in four languages, as the trade uses them."""

MONTHS = {
    "en": "January February March April May June July August September October November December",
    "de": "Januar Februar März April Mai Juni Juli August September Oktober November Dezember",
    "fr": "janvier février mars avril mai juin juillet août septembre octobre novembre décembre",
    "es": "enero febrero marzo abril mayo junio julio agosto septiembre octubre noviembre diciembre",
}

_TABLE = """
total|TOTAL;Total due;Balance due;AMOUNT DUE;Total to pay|SUMME;Gesamtbetrag;Zu zahlen;TOTAL;Endbetrag|TOTAL TTC;Net à payer;TOTAL;Total à payer|TOTAL;Total a pagar;IMPORTE TOTAL
invoice total|Invoice total;Total inc. tax;Amount due|Rechnungsbetrag;Gesamtbetrag brutto;Gesamt inkl. Steuer|Total TTC;Net à payer;Montant TTC|Total factura;TOTAL;Importe total
subtotal|Subtotal;Sub-total;Goods total|Zwischensumme;Zw.-Summe|Sous-total|Subtotal;Suma
net|Net;Net total;Excl. tax|Netto;Nettobetrag|Total HT;Montant HT|Base imponible;Base
net short|Net|Netto|HT|Base
gross short|Gross|Brutto|TTC|Total
rate|Rate|Satz|Taux|Tipo
tax short|Tax|Steuer|Taxe|Cuota
including|incl.|inkl.;enth.;darin|dont|incluye
cash|Cash;CASH TENDERED|Bar;Gegeben;BAR|Espèces;ESPECES|Efectivo;Entregado
change|Change;CHANGE DUE|Rückgeld;Zurück|Rendu;A rendre|Cambio;Devolución
card|Card;DEBIT CARD;Contactless|Kartenzahlung;EC-Karte|Carte bancaire;CB SANS CONTACT|Tarjeta
rounding|Rounding|Rundung|Arrondi|Redondeo
article|Part no;Item;P/N;Part #|Art.-Nr.;ArtNr;Teile-Nr.;Best.-Nr.|Réf.;Ref;Code art.|Ref.;Cód.;Referencia
quantity|Qty|Menge;Anz.|Qté|Cant.;Uds
each|each;ea|St.;Stk|pce;u.|ud
hours|h;hrs|Std.;h|h|h
description|Description;Item|Bezeichnung;Artikel|Désignation;Article|Descripción;Concepto
unit price|Price;Unit|E-Preis;Einzel|P.U.;Prix unit.|Precio;P. unit.
amount|Amount;Total|Betrag;Gesamt;EUR|Montant;Total|Importe
receipt no|Receipt;Trans;Ticket no|Bon-Nr.;Beleg|Ticket;No ticket|Ticket;N.º ticket
invoice no|Invoice no;Invoice|Rechnung Nr.;Rechnungs-Nr.|Facture no;Facture N°|Factura n.º;N.º factura
invoice|INVOICE;Tax invoice|RECHNUNG;Rechnung|FACTURE;Facture|FACTURA
date|Date|Datum|Date|Fecha
till|Till 2;Register 03;POS 1|Kasse 2;Kasse 01|Caisse 2;Caisse 01|Caja 2;TPV 1
served by|Served by;Clerk|Es bediente Sie;Bediener|Servi par;Vendeur|Le atendió;Vendedor
clerk|Moira;Bob T.;Op 04|Fr. Nebel;Hr. Zahn;B. 03|Odile;Vend. 12;Rémi|Paco;Emp. 07;Lucía
welcome|Welcome to;CUSTOMER COPY;*** RECEIPT ***|Willkommen bei;*** KASSENBON ***;Kundenbeleg|Bienvenue chez;TICKET CLIENT|Bienvenido a;TICKET CLIENTE;FACTURA SIMPLIFICADA
thanks|Thank you for your custom;THANK YOU;Please call again|Vielen Dank für Ihren Einkauf;Gute Fahrt!;Danke und auf Wiedersehen|Merci de votre visite;Bonne route !;A bientôt|Gracias por su visita;Buen viaje;Gracias por su compra
returns|Returns with receipt until|Umtausch mit Bon bis|Échange avec ticket jusqu'au|Cambios con ticket hasta el
due|Payment due|Zahlbar bis|Échéance|Vencimiento
next test|Next test due|Nächste HU|Prochain contrôle technique|Próxima ITV
items|Items|Anzahl Artikel;Posten|Nb articles|Artículos
phone|Tel|Tel.|Tél.|Tel.;Tfno
pump|Pump|Säule;Zapfpunkt|Pompe|Surtidor
volume|Litres;Volume|Menge;Liter|Quantité;Volume|Litros;Cantidad
per unit|Price/L;Per litre|Preis/L;EUR/l;Literpreis|Prix/L;Prix unit.|Precio/L;Eur/litro
odometer|Mileage;Odometer|km-Stand;Kilometerstand|Kilométrage;Compteur|Kilómetros;Km
plate|Reg|Kennzeichen|Immat.|Matrícula
vehicle|Vehicle|Fahrzeug|Véhicule|Vehículo
customer|Customer|Kunde|Client|Cliente
labour|Labour|Arbeit|Main d'œuvre|Mano de obra
parts|Parts|Teile;Material|Pièces|Recambios
deposit|Old unit deposit|Altteilpfand|Consigne|Depósito casco
discount|Discount 10%;Trade discount|Rabatt 10%;Nachlass|Remise 10%;Remise|Descuento 10%;Dto.
deferred|Prices include tax|Alle Preise inkl. Steuer|Prix TTC|Precios con impuestos incluidos
approved|APPROVED|Zahlung erfolgt|ACCEPTE|OPERACION ACEPTADA
page|Page 1 of 1|Seite 1 von 1|Page 1/1|Página 1 de 1
"""


def _words():
    words = {"en": {}, "de": {}, "fr": {}, "es": {}}
    for row in _TABLE.strip().splitlines():
        key, *columns = row.split("|")
        for language, column in zip(words, columns, strict=True):
            words[language][key] = tuple(column.split(";"))
    return words


# By language and key: the ways in which a receipt may say it.
WORDS = _words()
