# What stands on the full report beside what it shares with the history card and the page behind one.

# ---- Labels

report-title = Informe completo
report-contents = Índice
report-summary = El historial en resumen

# Two of what may have commas of its own; of more, $list is what stands before the last. $list, $next: what was found,
# what is due, or years with their values
report-list = { $list }; { $next }

# ---- The first page

# Under the head of the book. $signed: yes where the square is signed, no where it holds plain text
report-head-note = { $signed ->
    [yes] Lo que contiene el código QR está firmado; las páginas de este informe, no. Lo que dicen puede demostrarlo el libro: el código QR contiene también este estado, con el que se coteja el libro.
   *[no] Nada de este informe está firmado. Las anotaciones del libro sí lo están y pueden demostrar lo que dice.
}

# ---- What the history comes to

# $count: struck-out visits
report-struck-count = { $count ->
    [one] Una intervención está tachada; figura como tal y no cuenta.
   *[other] { $count } intervenciones están tachadas; figuran como tales y no cuentan.
}
# $why: no: not asked for; private: they would show what is left out
report-without-photos = { $why ->
    [private] Las fotos de los justificantes se omiten, porque mostrarían los nombres o el número omitidos.
   *[no] Las fotos de los justificantes se omiten.
}
report-photos-small = Las fotos de los justificantes son tan pequeñas que no se lee en ellas ningún precio, porque los precios se omiten.
# $most: a number
report-photos-most = Las fotos acompañan a las intervenciones más recientes, { $most } como máximo; el libro las contiene todas.
# $most: a number; $count: how many older ones
report-left-out = { $count ->
    [one] En el libro hay una intervención más antigua; un informe muestra las { $most } más recientes.
   *[other] En el libro hay { $count } intervenciones más antiguas; un informe muestra las { $most } más recientes.
}
# $kind: of fuel; $unit: of consumption
report-use = Consumo por año: { $kind }, { $unit }
# $currency: its code
report-costs = Gastos por año, { $currency }
report-costs-note = Todo lo que en el libro tiene precio: combustible, piezas, mano de obra, impuestos, seguro e inspecciones.
# Under bars of which the last is ruled
report-open-year = Rayado: el año no ha terminado.
# A drawing for who cannot see it. $title: what is drawn; $values: each year with its value
report-bars-say = { $title }. { $values }.
# $year: a year; $value: what it came to
report-bar-says = { $year }: { $value }

# ---- A visit

report-struck = Tachado: esta línea no cuenta.
# $why: the owner's words
report-struck-why = Tachado: esta línea no cuenta. Motivo: { $why }
# $found: what was found, item by item
report-found = Observado: { $found }
# $item: an item; $finding: in a word
report-found-item = { $item }: { $finding }
# $value: with its unit
report-found-measured = { $item }: { $finding } ({ $value })
# $name: a part; $kind: of which kind it is
report-part-kind = { $name } ({ $kind })
report-amount-piece = { $amount } ×
report-amount-set = { $amount } × juego
report-amount-litre = { $amount } l
report-amount-kilogram = { $amount } kg
report-amount-metre = { $amount } m
# $number, $of: which photo of how many; $day: of the visit
report-photo-says = Foto de un justificante, { $number } de { $of }, intervención del { $day }
report-photo-missing = { $count ->
    [one] La foto de un justificante ya no existe.
   *[other] Las fotos de { $count } justificantes ya no existen.
}

# ---- What to ask

report-ask-note = Calculado a partir de las intervenciones, según los límites usuales del oficio. Una pregunta no es un defecto comprobado.
report-no-questions = Según los límites usuales del oficio, el historial no da motivo para preguntar nada.
# In place of the sentences for a card that was scanned
report-ask-no-visits = El libro no contiene ninguna intervención: ¿qué se le hizo al vehículo y dónde está escrito?
report-ask-ahead = El libro nombra el { $day }, posterior al día de este informe: ¿está mal escrita una fecha?
