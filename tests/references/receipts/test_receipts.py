"""The reader against receipts that are drawn here and spoilt like a phone photo, with floors under what it must read;
and the drawing itself: that it says the truth about what it prints, and draws the same from the same seed.

Part of the photos lie on their side or head, part are faded; `python score.py` runs the whole corpus and shows what
was missed."""

import io
import os
from datetime import date
from decimal import ROUND_HALF_UP, Decimal

import pytest
from PIL import Image, ImageOps

import score
from corpus import photo
from draw import draw
from shops import of_style

# Half of them in each style; always the same.
FIXED = [(24, index, style) for style in "ab" for index in range(12)]
STYLES = ("a", "b")


@pytest.fixture(scope="module")
def scored():
    """The reader's score over the fixed photos."""
    result = score.run(os.environ["WELLKEPT"], os.environ.get("WELLKEPT_MODELS"), FIXED)
    print(score.table(result))
    return result


def test_every_photo_is_answered(scored):
    assert scored.failed == []


@pytest.mark.parametrize(("field", "floor"), [("total", 0.92), ("day", 0.90), ("numbers", 0.85)])
def test_the_floors_hold(scored, field, floor):
    assert scored.fields[field].rate >= floor, score.table(scored)


def test_hardly_anything_is_wrong_and_called_sure(scored):
    assert scored.sure > 0, "a reader that is sure of nothing would pass"
    assert scored.share_wrong_and_sure <= 0.02, score.table(scored)


# The drawing.


@pytest.fixture(scope="module", params=STYLES)
def drawn(request):
    """A receipt of every shop of a style."""
    style = request.param
    return style, [draw(7, index, style) for index in range(len(of_style(style)))]


def test_every_shop_has_a_receipt(drawn):
    style, receipts = drawn
    assert {receipt.truth["name"] for receipt in receipts} == {shop.name for shop in of_style(style)}


def test_lines_taxes_and_rounding_add_up_to_the_total(drawn):
    for truth in truths(drawn):
        lines = sum(line["price"] for line in truth["lines"])
        assert lines + (sum(truth["tax"]) if truth["net"] else 0) + truth["rounding"] == truth["total"], truth
        assert abs(truth["rounding"]) <= 2


def test_volume_times_price_is_the_amount(drawn):
    fuels = [truth["fuel"] for truth in truths(drawn) if truth["fuel"]]
    assert len(fuels) >= 8
    for fuel in fuels:
        amount = Decimal(fuel["volume"]) * Decimal(fuel["price"]) * 100
        assert amount.quantize(Decimal(1), ROUND_HALF_UP) == fuel["total"]


def test_what_is_to_be_read_stands_on_the_paper(drawn):
    for truth in truths(drawn):
        rows = truth["printed"]
        for number in truth["numbers"]:
            assert any(number in row for row in rows), (number, rows)
        assert any(truth["written_day"] in row for row in rows), truth
        assert truth["shop"] in " ".join(rows)
        digits = str(truth["total"] % 1000)[-3:]
        assert any(digits in "".join(sign for sign in row if sign.isdigit()) for row in rows), truth


def test_a_day_is_ambiguous_only_if_it_has_another_reading(drawn):
    for truth in truths(drawn):
        day = date.fromisoformat(truth["day"])
        if truth["ambiguous"]:
            assert day.day <= 12 and day.day != day.month
            assert not any(sign.isalpha() for sign in truth["written_day"])


def truths(drawn):
    return [receipt.truth for receipt in drawn[1]]


@pytest.mark.parametrize("style", STYLES)
def test_the_same_seed_gives_the_same_bytes(style):
    assert photo(3, 5, style) == photo(3, 5, style)
    assert draw(3, 5, style).truth != draw(4, 5, style).truth


def test_a_photo_is_as_large_as_from_a_phone():
    jpeg, truth = photo(3, 0, "a")
    picture = Image.open(io.BytesIO(jpeg))
    assert 2.9e6 <= picture.width * picture.height <= 12.1e6
    assert list(picture.size) == truth["taken"]["size"]
    turned = ImageOps.exif_transpose(picture)
    assert (turned.size != picture.size) == (truth["taken"]["told"] and truth["taken"]["turns"] in (1, 3))


# The scoring.


def perfect(truth):
    """The answer of a reader that reads everything."""
    sure = {"sure": "sure"}
    fuel, odometer = truth["fuel"], truth["odometer"]
    return {
        "fields": {
            "shop": {"value": truth["shop"]} | sure,
            "day": {"value": truth["day"], "or": None} | sure,
            "total": {"value": f"{truth['total'] / 100:.2f}", "currency": truth["currency"]} | sure,
            "tax": [{"value": f"{tax / 100:.2f}"} | sure for tax in truth["tax"]],
            "numbers": [{"value": number.lower().replace(" ", "")} | sure for number in truth["numbers"]],
            "lines": [
                {"quantity": line["quantity"], "price": f"{line['price'] / 100:.2f}"} for line in truth["lines"]
            ],
            "fuel": fuel and {"volume": fuel["volume"], "unit": fuel["unit"], "price": fuel["price"]} | sure,
            "odometer": odometer and dict(odometer) | sure,
        }
    }


def test_a_perfect_answer_scores_in_full(drawn):
    for truth in truths(drawn):
        for name, tally in score.compare(truth, perfect(truth)).items():
            assert tally.read == tally.of and not tally.extra and not tally.wrong_and_sure, (name, truth)


def test_no_answer_scores_nothing_and_nothing_wrong(drawn):
    for truth in truths(drawn):
        tallies = score.compare(truth, {})
        assert tallies["total"].of == 1
        assert all(tally.read == 0 and tally.extra == 0 and tally.sure == 0 for tally in tallies.values())


def test_a_wrong_value_counts_as_wrong_and_sure_only_if_called_sure(drawn):
    truth = truths(drawn)[0]
    for sure in ("sure", "likely"):
        answer = {
            "fields": {"numbers": [{"value": "205/55 R16", "sure": sure}], "shop": {"value": "Else", "sure": sure}}
        }
        tallies = score.compare(truth, answer)
        for name in ("numbers", "shop"):
            assert tallies[name].extra == 1 and tallies[name].wrong_and_sure == (sure == "sure")


def test_an_ambiguous_day_is_met_by_either_reading():
    truth = {"day": "2026-03-04", "ambiguous": True}
    kinds = {(False, "likely"): (1, 0), (False, "sure"): (1, 1), (True, "sure"): (1, 0)}
    base = draw(7, 0, "a").truth
    for (first, sure), (read, wrong) in kinds.items():
        days = ("2026-03-04", "2026-04-03") if first else ("2026-04-03", "2026-03-04")
        answer = {"fields": {"day": {"value": days[0], "or": days[1], "sure": sure}}}
        tally = score.compare(base | truth, answer)["day"]
        assert (tally.read, tally.wrong_and_sure) == (read, wrong)
        plain = score.compare(base | truth | {"ambiguous": False}, answer)["day"]
        assert plain.read == first
