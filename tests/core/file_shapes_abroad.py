"""Survey files as offices and collectors of many countries write them: headers and units rows of their own, encodings
and line ends, quoted decimals, times with zones and GPS weeks, heights before plan, surveys one behind another.
"""

from __future__ import annotations

from typing import Dict, Iterator, List, Tuple

from tests.core.file_shapes import N, Shape, Truth, by_line, columns_of, decimals, hash_of, lines_of, site
from tests.core.file_shapes_found import HALF, made

#: Header words: name, easting, northing, height, code, and a row of units below.
_WORDS: Dict[str, Tuple[List[str], str]] = {
    "it": (["Nome punto", "Coord. Est", "Coord. Nord", "Quota s.l.m.", "Codice"], "cp1252"),
    "nl": (["Puntnummer", "X-coördinaat (oost)", "Y-coördinaat (noord)", "Hoogte NAP", "Omschrijving"], "cp1252"),
    "pl": (["Nazwa punktu", "Współrzędna E", "Współrzędna N", "Wysokość H", "Kod punktu"], "cp1250"),
    "pt": (["Nome do ponto", "Coordenada Este", "Coordenada Norte", "Cota ortométrica", "Descrição"], "latin-1"),
    "cs": (["Číslo bodu", "Souřadnice E", "Souřadnice N", "Nadmořská výška", "Poznámka"], "cp1250"),
    "sv": (["Punktnummer", "Östkoordinat", "Nordkoordinat", "Höjd RH2000", "Kod"], "cp1252"),
}
_EVERY = {"--columns": "name=1,easting=2,northing=3,height=4,code=5"}


def headed_abroad() -> Iterator[Shape]:
    """Headers of six languages in old encodings, with lone CR or a byte order mark, comma decimals in quotes."""
    for language, (words, encoding) in _WORDS.items():
        for label, sign, mark, quoted, end, written in (
            ("old", ";", ",", False, "\r\n", encoding), ("quoted", ",", ",", True, "\n", "utf-8-sig"),
            ("CR", "\t", ".", False, "\r", "utf-16"),
        ):  # fmt: skip
            truth = site(hash_of(language + label))
            columns = list(columns_of(truth).values())
            numbers = [[word.replace(".", mark) for word in column] for column in columns[1:4]]
            numbers = [[f'"{word}"' for word in column] for column in numbers] if quoted else numbers
            text = lines_of([columns[0], *numbers, columns[4]], sign, words).replace("\n", end)
            codes = by_line(truth.codes, 2)
            yield made(f"abroad {language} {label}", text, truth, 2, written, codes=codes, meant=_EVERY)


def rows_of_units_abroad() -> Iterator[Shape]:
    """A row of units under the header, and delimiters at the ends of lines."""
    for words, units, sign in (
        (["Punto", "Est", "Nord", "Quota", "Codice"], ["-", "[m]", "[m]", "[m]", "-"], ";"),
        (["Punt", "Oost", "Noord", "Hoogte", "Code"], ["", "m", "m", "m", ""], ";"),
        (["Ponto", "Este", "Norte", "Cota", "Código"], ["", "(m)", "(m)", "(m)", ""], ","),
        (["Nr", "Wschód", "Północ", "Wysokość", "Kod"], ["", "[m]", "[m]", "[m]", "[-]"], "\t"),
    ):
        for ended in (False, True):
            truth = site(hash_of(words[1] + sign))
            head = "\n".join(sign.join(row) for row in (words, units)) + "\n"
            text = head + lines_of(list(columns_of(truth).values()), sign)
            text = text.replace("\n", f"{sign}\n") if ended else text
            yield made(f"units below {words[1]} {ended}", text, truth, 3, codes=by_line(truth.codes, 3), meant=_EVERY)


def times_abroad() -> Iterator[Shape]:
    """ISO times with zones, GPS weeks with seconds, and days first with dots."""
    seconds = [int(second) for second in site(3).time]
    week = [f"{(second - 315964800 + 18) // 604800}" for second in seconds]
    of_week = [f"{(second - 315964800 + 18) % 604800}.000" for second in seconds]
    zones = [_iso(second + 7200) + "+02:00" for second in seconds]
    offsets = [_iso(second - 18000) + "-0500" for second in seconds]
    dotted = [f"{_iso(s)[8:10]}.{_iso(s)[5:7]}.{_iso(s)[:4]} {_iso(s)[11:]}" for s in seconds]
    for label, columns, words, told in (
        ("zone", [zones], ["Time"], True), ("offset", [offsets], ["Timestamp"], True),
        ("week", [week, of_week], ["GPS week", "GPS seconds"], False), ("dotted", [dotted], ["Datum Zeit"], True),
        ("Z", [[_iso(second) + ".000Z" for second in seconds]], ["Data e ora"], True),
    ):  # fmt: skip
        truth = site(3)
        text = lines_of([*columns_of(truth).values(), *columns], ";", ["Pt", "E", "N", "H", "Code", *words])
        time = by_line(truth.time.tolist(), 2) if told else None
        yield made(f"time abroad {label}", text, truth, 2, time=time, codes=by_line(truth.codes, 2), meant=_EVERY)


def _iso(second: int) -> str:
    from datetime import datetime, timezone

    return datetime.fromtimestamp(second, timezone.utc).strftime("%Y-%m-%dT%H:%M:%S")


def heights_first() -> Iterator[Shape]:
    """Heights before the plan, with words and without."""
    for words, sign in (
        (["Quota", "Est", "Nord", "Punto"], ";"), (["Hoogte", "Oost", "Noord", "Punt"], ","),
        (["H", "N", "E", "Nr"], "\t"), (["Wysokość", "Północ", "Wschód", "Punkt"], ";"),
        (["Elev", "North", "East", "ID"], ","),
    ):  # fmt: skip
        truth = site(hash_of(words[0]))
        columns = columns_of(truth)
        north = words[1] in ("N", "Północ", "North")
        plan = [columns["northing"], columns["easting"]] if north else [columns["easting"], columns["northing"]]
        text = lines_of([columns["height"], *plan, columns["name"]], sign, words)
        yield made(f"height first {words[0]}", text, truth, 2, names=by_line(truth.names, 2))
    truth = site(6)
    columns = columns_of(truth)
    text = lines_of([columns["height"], columns["easting"], columns["northing"]], ";")
    yield made("height first bare", text, truth, 1, meant={"--columns": "height=1,easting=2,northing=3"})


def one_behind_another() -> Iterator[Shape]:
    """Several surveys in a file, each with its title, header and row of units, or totals between."""
    for title, words, units, sign in (
        ("Rilievo {}", ["Punto", "Est", "Nord", "Quota"], "", ";"), ("", ["Punt", "Oost", "Noord", "Hoogte"], "", "\t"),
        ("# Medição {}", ["Ponto", "Este", "Norte", "Cota"], ";m;m;m", ";"),
        ("Mätning {}", ["Punkt", "Öst", "Norr", "Höjd"], "", ","),
        ("Dzień {}", ["Nr", "Wschód", "Północ", "Wysokość"], "", ";"),
        ("Job: {}", ["Point", "Easting", "Northing", "Elevation"], "", ","),
    ):  # fmt: skip
        truth = site(hash_of(words[1]))
        rows = lines_of(list(columns_of(truth).values())[:4], sign).splitlines()
        lines: List[str] = []
        found: Dict[int, Tuple[float, float, float]] = {}
        for part, (begin, end) in enumerate(((0, 16), (16, 32), (32, N))):
            above = [title.format(part + 1)] if title else []
            lines += [*above, sign.join(words), *([units] if units else [])]
            for i in range(begin, end):
                lines.append(rows[i])
                found[len(lines)] = (truth.east[i], truth.north[i], truth.height[i])
        yield Shape(f"behind another {words[1]}", ("\n".join(lines) + "\n").encode(), found)


def stations_with_blanks() -> Iterator[Shape]:
    """Names of several words, numbered stations, and tabs with blanks around fields."""
    for label, form, sign in (
        ("US", "STA {}+{:02d}", ","), ("route", "US 101 MP {}.{:02d}", "\t"), ("tabs", "CP {}-{:02d}", " \t "),
        ("quoted", '"Sta. {}+{:02d}, CL"', ","), ("hash", "No. {}/{:02d}", ";"),
    ):  # fmt: skip
        truth = site(hash_of(label))
        names = [form.format(10 + i // 20, (i * 5) % 100) for i in range(N)]
        columns = list(columns_of(truth).values())[1:]
        text = lines_of([names, *columns], sign, ["Station", "Easting", "Northing", "Elevation", "Desc"])
        said = by_line([name.strip('"') for name in names], 2)
        yield made(f"station {label}", text, truth, 2, names=said, codes=by_line(truth.codes, 2), meant=_EVERY)
        if label in ("US", "tabs"):
            bare = lines_of([names, *columns], sign)
            named = by_line(names, 1)
            yield made(f"station {label} bare", bare, truth, 1, names=named, meant=_EVERY)


def spreadsheets_abroad() -> Iterator[Shape]:
    """What spreadsheets of other locales make: a sep= line, Swiss and Nordic thousands, exponents, empty rows."""
    truth = site(41)
    columns = columns_of(truth)
    names, codes = columns["name"], columns["code"]
    comma = [[word.replace(".", ",") for word in columns[role]] for role in ("easting", "northing", "height")]
    words = ["Nr", "Est", "Nord", "Quota", "Codice"]
    yield made("sheet sep", "sep=;\n" + lines_of([names, *comma, codes], ";", words), truth, 3, codes=by_line(codes, 3))
    for label, part, mark in (
        ("Swiss", "'", "."),
        ("Nordic", "\u00a0", ","),
        ("Italian", ".", ","),
        ("thin", "\u202f", ","),
    ):
        made_plan = [[_grouped(word, part, mark) for word in columns[role]] for role in ("easting", "northing")]
        height = [word.replace(".", mark) for word in columns["height"]]
        yield made(
            f"sheet {label}",
            lines_of([names, *made_plan, height, codes], ";", words),
            truth,
            2,
            codes=by_line(codes, 2),
        )
    rows = lines_of([names, *comma, codes], ";").splitlines()
    gaps = ";".join(words) + "\n" + "".join(f"{row}\n;;;;\n" if i == HALF else f"{row}\n" for i, row in enumerate(rows))
    found = {2 + i + (i > HALF): point for i, point in enumerate(_points(truth))}
    yield Shape("sheet empty row", gaps.encode(), found)
    rows_of = lines_of([names, *comma, codes], ";", words)
    yield made("sheet title", "Elenco punti;;;;\n;;;;\n" + rows_of, truth, 4, codes=by_line(codes, 4))
    plain = lines_of(
        [columns["easting"], columns["northing"], columns["height"], names, codes],
        ";",
        ["Est", "Nord", "Quota", "Punto", "Note"],
    )
    yield made("sheet name behind", plain, truth, 2, names=by_line(names, 2), codes=by_line(codes, 2))
    yield made(
        "sheet feet row",
        lines_of(
            [names, decimals(truth.east), decimals(truth.north), decimals(truth.height, "ft", 4), codes],
            ";",
            ["Nr", "Est (m)", "Nord (m)", "Quota (piedi)", "Codice"],
        ),
        truth,
        2,
        meant={"--height-unit": "ft", "--units-from": "header"},
    )


def _points(truth: Truth) -> List[Tuple[float, float, float]]:
    return list(zip(truth.east.tolist(), truth.north.tolist(), truth.height.tolist()))


def _grouped(word: str, part: str, mark: str) -> str:
    whole, _, rest = word.partition(".")
    return f"{int(whole):,}".replace(",", part) + f"{mark}{rest}"


def every_abroad() -> List[Shape]:
    """All families."""
    families = (
        headed_abroad, rows_of_units_abroad, times_abroad, heights_first, one_behind_another, stations_with_blanks,
        spreadsheets_abroad,
    )  # fmt: skip
    return [shape for family in families for shape in family()]
