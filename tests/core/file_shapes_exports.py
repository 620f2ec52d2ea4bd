"""Survey files as receivers, controllers, office programs and spreadsheets of several countries write them; words of
other languages and forms of tables from memory, common practice, no source.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Iterator, List

import numpy as np

from tests.core.file_shapes import N, Shape, Truth, by_line, columns_of, decimals, fixed, hash_of, lines_of, site
from tests.core.file_shapes_found import EVERY, USUAL, degrees_of, made

FOUR = {"--columns": "name=1,easting=2,northing=3,height=4"}


def cells_of(seed: str, height: float = 92.0) -> tuple[Truth, List[List[str]]]:
    truth = site(hash_of(seed), height=height)
    return truth, list(columns_of(truth).values())


def negative() -> Iterator[Shape]:
    """Heights below the datum, in the ways to write less than nothing."""
    for form in ("-{}", "\u2212{}", "\u2013{}", "{}-", "({})", "- {}"):
        truth, columns = cells_of(form, height=-4.0)
        columns[3] = [form.format(one.lstrip("-")) for one in columns[3]]
        yield made(f"below zero {form}", lines_of(columns, ";", USUAL), truth, 2, meant=EVERY)


def office() -> Iterator[Shape]:
    """What a spreadsheet or an office program leaves of a table."""
    truth, columns = cells_of("office")
    codes = by_line(truth.codes, 2)
    for error in ("#N/A", "#REF!", "#VALUE!", "#DIV/0!", "#NV", "#WERT!", "#BEZUG!", "#NOM?", "#¡VALOR!", "########"):
        skip = [3, 17, 30]
        rise = [error if i in skip else one for i, one in enumerate(columns[3])]
        text = lines_of([*columns[:3], rise, columns[4]], ",", USUAL)
        yield made(f"office {error}", text, truth, 2, skip=skip, meant={**EVERY, "--no-value": error})
    for word in ("k.A.", "s/d", "sin dato", "brak", "нет", "n.d.", "n. v.", "fehlt", "manquant", "?", "x", "...", "–"):
        skip = [3, 17, 30]
        rise = [word if i in skip else one for i, one in enumerate(columns[3])]
        text = lines_of([*columns[:3], rise, columns[4]], ";", USUAL)
        yield made(f"no height {word}", text, truth, 2, skip=skip, meant={**EVERY, "--no-value": word})
    for group, mark, sign in (
        ("'", ".", ";"),
        ("’", ".", ";"),
        (".", ",", ";"),
        ("\u2009", ".", ";"),
        ("\u202f", ",", ";"),
    ):

        def grouped(word: str, group: str = group, mark: str = mark) -> str:
            whole, part = word.split(".")
            return f"{int(whole):,}".replace(",", group) + mark + part

        table = [columns[0], *[[grouped(one) for one in column] for column in columns[1:4]], columns[4]]
        yield made(f"grouped by {group!r}", lines_of(table, sign, USUAL), truth, 2, codes=codes, meant=EVERY)

    def lakh(word: str) -> str:
        whole, part = word.split(".")
        head, tail = whole[:-3], whole[-3:]
        pieces = []
        while len(head) > 2:
            pieces.insert(0, head[-2:])
            head = head[:-2]
        pieces = [head, *pieces] if head else pieces
        return ",".join([*pieces, tail]) + "." + part

    table = [columns[0], *[[lakh(one) for one in column] for column in columns[1:4]], columns[4]]
    yield made("grouped by two", lines_of(table, ";", USUAL), truth, 2, codes=codes, meant=EVERY)
    table = [[f'"{one}"' for one in column] for column in table]
    yield made("grouped by two quoted", lines_of(table, ",", USUAL), truth, 2, codes=codes, meant=EVERY)
    numbered = [[str(i) for i in range(N)], *columns]
    yield made("index without a word", lines_of(numbered, ",", ["", *USUAL]), truth, 2, codes=codes)
    yield made("index named as such", lines_of(numbered, ",", ["Unnamed: 0", *USUAL]), truth, 2, codes=codes)
    blank = [[""] * N, *columns]
    yield made("first column empty", lines_of(blank, ";", ["", *USUAL]), truth, 2, codes=codes)
    text = ";;;;\n;Survey of the meadow;;;\n;;;;\n" + lines_of(columns, ";", USUAL) + ";;;;\nsurveyed by;A. N.;;;\n"
    yield made("title rows", text, truth, 5, codes=by_line(truth.codes, 5))
    rows = lines_of(columns, ";", USUAL).splitlines()
    for row in ("Kerb line;;;;", "Line 2", "--- path ---", "Objekt: Weg;;;;", "*;;;;", "[Line 3]"):
        parted = [*rows[:20], row, *rows[20:]]
        points = {line + (line > 20): place for line, place in made("", "", truth, 2).truth.items()}
        yield Shape(f"exports title within {row}", "\n".join(parted).encode(), points, meant=EVERY)
    short = [
        row.rstrip(";")
        for row in lines_of(
            [*columns[:4], [c if i % 3 else "" for i, c in enumerate(columns[4])]], ";", USUAL
        ).splitlines()
    ]
    yield made("codes left off", "\n".join(short) + "\n", truth, 2)
    yield made("header too short", lines_of(columns, ";", USUAL[:4]), truth, 2)
    yield made("header too long", lines_of(columns, ";", [*USUAL, "Note", "Photo"]), truth, 2, codes=codes)
    marked = [[f"{name}*" for name in columns[0]], *columns[1:]]
    yield made("names with stars", lines_of(marked, ",", USUAL), truth, 2, codes=codes)
    dated = [[f"{i + 1:02d}.Jan" for i in range(N)], *columns[1:]]
    yield made("names made dates", lines_of(dated, ";", USUAL), truth, 2, codes=codes)
    yield made("decimal names", lines_of([[f"{i + 1}.1" for i in range(N)], *columns[1:]], ",", USUAL), truth, 2)
    yield made("zeros before names", lines_of([[f"{i:06d}" for i in range(N)], *columns[1:]], ",", USUAL), truth, 2)
    yield made(
        "names of seven digits", lines_of([[f"{5712000 + i}" for i in range(N)], *columns[1:]], ",", USUAL), truth, 2
    )
    yield made(
        "names of seven digits without words",
        lines_of([[f"{5712000 + i}" for i in range(N)], *columns[1:]], ","),
        truth,
        1,
        meant=EVERY,
    )


def tables() -> Iterator[Shape]:
    """Tables of text programs, of programs that calculate, of lists with keys."""
    truth, columns = cells_of("tables")
    head = "| " + " | ".join(USUAL) + " |\n|" + "---|" * 5 + "\n"
    yield made(
        "exports bars",
        head + "".join("| " + " | ".join(row) + " |\n" for row in zip(*columns)),
        truth,
        3,
        meant={"--columns": "name=2,easting=3,northing=4,height=5,code=6"},
    )
    tex = " & ".join(USUAL) + " \\\\ \\hline\n" + "".join(" & ".join(row) + " \\\\\n" for row in zip(*columns))
    yield made("exports ampersands", tex, truth, 2, meant=EVERY)
    text = "survey\n5\n" + "\n".join(USUAL) + "\n" + lines_of([*columns[:4], ["1"] * N], " ")
    yield made(
        "exports names of columns on lines", text, truth, 8, meant={"--columns": "name=1,easting=2,northing=3,height=4"}
    )
    text = f"{N}\n" + lines_of(columns[1:4], " ")
    yield made("exports a count above", text, truth, 2, meant={"--columns": "easting=1,northing=2,height=3"})
    saved = [[f"{float(one):.18e}" for one in column] for column in columns[1:4]]
    yield made("exports long exponents", lines_of(saved, " ", ["# easting", "northing", "height"]), truth, 2)
    yield made(
        "exports long exponents without words",
        lines_of(saved, " "),
        truth,
        1,
        meant={"--columns": "easting=1,northing=2,height=3"},
    )
    for keys in (
        ("Point", "Easting", "Northing", "Elevation"),
        ("Punkt", "Rechtswert", "Hochwert", "Höhe"),
        ("Punto", "Este", "Norte", "Cota"),
        ("Pt", "X", "Y", "Z"),
    ):
        for mark in (": ", " = "):
            text = "".join("\n".join(k + mark + v for k, v in zip(keys, row)) + "\n\n" for row in zip(*columns[:4]))
            yield made(f"exports report {keys[1]}{mark}", text, truth, 2)
            text = "".join("  ".join(k + mark + v for k, v in zip(keys, row)) + "\n" for row in zip(*columns[:4]))
            yield made(
                f"exports report of a line {keys[1]}{mark}",
                text,
                truth,
                1,
                meant={"--columns": "name=1,easting=2,northing=3,height=4"},
            )
    for sign in ("^", "~", "::", "#", "/", "\\", "!", " ; ", " | "):
        yield made(
            f"exports parted by {sign!r}",
            lines_of([*columns[:4], ["GEL"] * N], sign, USUAL),
            truth,
            2,
            meant={**EVERY, "--delimiter": sign.strip() or sign},
        )
    for first in ("PT", "P", "10", "POINT", "Punkt", "*"):
        rows = [[first] * N, *columns]
        yield made(
            f"exports a mark before all {first}",
            lines_of(rows, ","),
            truth,
            1,
            meant={"--columns": "name=2,easting=3,northing=4,height=5,code=6"},
        )
    plain = [f"{a} {b}mE {c}mN {d}m" for a, b, c, d in zip(*columns[:4])]
    yield made("exports mE mN", "\n".join(plain) + "\n", truth, 1, meant=FOUR)
    plain = [f"{a};32U;{b};{c};{d}" for a, b, c, d in zip(*columns[:4])]
    yield made("exports zone before", "\n".join(["Name;Zone;E;N;H", *plain]) + "\n", truth, 2)
    yield made(
        "exports named by fixed",
        fixed([*columns[:4], ["GEL"] * N], ["Punkt-Nr.", "Rechts", "Hoch", "Höhe", "Art"]),
        truth,
        2,
        meant=EVERY,
    )


def clocks() -> Iterator[Shape]:
    """Times as receivers and programs of several countries write them."""
    truth, columns = cells_of("clocks")
    seconds = [f"{6 * 60 + 2 + i}" for i in range(N)]
    hms = [(7 * 3600 + int(one)) for one in seconds]
    parts = [(h // 3600, h // 60 % 60, h % 60) for h in hms]
    forms = {
        "T Z": "2025-04-09T{:02d}:{:02d}:{:02d}Z", "T offset": "2025-04-09T{:02d}:{:02d}:{:02d}+00:00",
        "T ms": "2025-04-09T{:02d}:{:02d}:{:02d}.000Z", "month name": "09-Apr-2025 {:02d}:{:02d}:{:02d}",
        "month first": "Apr 9, 2025 {:02d}:{:02d}:{:02d}", "digits": "20250409{:02d}{:02d}{:02d}",
        "digits T": "20250409T{:02d}{:02d}{:02d}Z", "dots": "09.04.2025 {:02d}:{:02d}:{:02d}",
        "slashes": "2025/04/09 {:02d}:{:02d}:{:02d}", "comma seconds": "2025-04-09 {:02d}:{:02d}:{:02d},000",
        "h m s": "2025-04-09 {:02d}h{:02d}m{:02d}s", "UTC": "2025-04-09 {:02d}:{:02d}:{:02d} UTC",
        "clock dots": "2025-04-09 {:02d}.{:02d}.{:02d}", "day year": "2025-099 {:02d}:{:02d}:{:02d}",
        "a m": "04/09/2025 {:d}:{:02d}:{:02d} a.m.", "year last": "09-04-2025 {:02d}:{:02d}:{:02d}",
    }  # fmt: skip
    day = 1744156800.0
    for label, form in forms.items():
        cells = [form.format(*one) for one in parts]
        quoted = [f'"{one}"' for one in cells]
        for sign in ";," if label in ("T Z", "month first", "comma seconds") else ";":
            text = lines_of([*columns, quoted if sign == "," else cells], sign, [*USUAL, "Date/Time"])
            yield made(f"clock {label} {sign}", text, truth, 2, codes=by_line(truth.codes, 2), meant=EVERY)
    unix = [f"{int((day + one) * 1000)}" for one in hms]
    yield made(
        "clock in ms", lines_of([*columns, unix], ",", [*USUAL, "timestamp"]), truth, 2, codes=by_line(truth.codes, 2)
    )
    week = [["2361"] * N, [f"{3 * 86400 + one}.00" for one in hms]]
    yield made(
        "clock week",
        lines_of([*columns, *week], ",", [*USUAL, "GPS Week", "GPS Seconds"]),
        truth,
        2,
        codes=by_line(truth.codes, 2),
    )
    before = [["2361"] * N, [f"{3 * 86400 + one}.00" for one in hms], *columns[:4]]
    yield made(
        "clock week before",
        lines_of(before, " "),
        truth,
        1,
        meant={"--columns": "name=3,easting=4,northing=5,height=6"},
    )


def other_systems() -> Iterator[Shape]:
    """Points of other countries' systems, in the order and with the signs that are usual there."""
    places = {
        2263: (984000.0, 203000.0), 27700: (452000.0, 423000.0), 2154: (652000.0, 6862000.0),
        28992: (136000.0, 456000.0),
        2177: (6512000.0, 5780000.0), 31467: (3512000.0, 5712000.0), 5514: (-743000.0, -1043000.0),
        2056: (2600000.0, 1200000.0), 3006: (674000.0, 6580000.0), 25830: (440000.0, 4474000.0),
        28355: (320000.0, 5812000.0),
        2193: (1749000.0, 5428000.0),
    }  # fmt: skip
    for code, (east, north) in places.items():
        base = site(code)
        feet = 1200 / 3937 if code == 2263 else 1.0
        truth = replace(
            base,
            east=np.round(base.east - base.east.mean() + east, 3),
            north=np.round(base.north - base.north.mean() + north, 3),
        )
        cols = [
            list(truth.names),
            decimals(truth.east),
            decimals(truth.north),
            decimals(truth.height),
            list(truth.codes),
        ]
        meant = (
            truth
            if feet == 1.0
            else replace(truth, east=truth.east * feet, north=truth.north * feet, height=truth.height * feet)
        )
        for label, order, head in (
            ("E N", (0, 1, 2, 3, 4), USUAL), ("N E", (0, 2, 1, 3, 4), USUAL), ("bare E N", (0, 1, 2, 3, 4), None),
            ("bare N E", (0, 2, 1, 3, 4), None), ("x y", (0, 1, 2, 3, 4), ["Pt", "X", "Y", "Z", "Code"]),
            ("y x", (0, 1, 2, 3, 4), ["Pt", "Y", "X", "Z", "Code"]),
            ("x y north", (0, 2, 1, 3, 4), ["Pt", "X", "Y", "Z", "Code"]),
        ):  # fmt: skip
            words = None if head is None else ([head[i] for i in order] if head is USUAL else head)
            roles = ("name", "easting", "northing", "height", "code")
            said = {"--columns": ",".join(f"{roles[i]}={at + 1}" for at, i in enumerate(order))}
            yield made(
                f"system {code} {label}",
                lines_of([cols[i] for i in order], ",", words),
                meant,
                1 + (words is not None),
                meant=said,
                crs=code,
            )


def degrees_more() -> Iterator[Shape]:
    """Latitudes and longitudes as logs, phones, and spreadsheets give them."""
    truth, columns = cells_of("degrees")
    lat, lon = [f"{v:.9f}" for v in truth.latitude], [f"{v:.9f}" for v in truth.longitude]
    up = columns[3]

    def shape(label: str, text: str, first: int, **more: object) -> Shape:
        return Shape(
            f"exports {label}", text.encode(), degrees_of(truth, first), geographic=True, precision=2e-8, **more
        )  # type: ignore[arg-type]

    comma = [[v.replace(".", ",") for v in column] for column in (lat, lon, up)]
    yield shape("degrees comma", lines_of([columns[0], *comma], ";", ["Punkt", "Breite", "Länge", "Höhe"]), 2)
    yield shape(
        "degrees x y",
        lines_of([columns[0], lon, lat, up], ",", ["name", "X", "Y", "Z"]),
        2,
        meant={"--columns": "name=1,longitude=2,latitude=3,height=4"},
    )
    yield shape(
        "degrees apart letters",
        lines_of([columns[0], lat, ["N"] * N, lon, ["E"] * N, up], ",", ["name", "lat", "N/S", "lon", "E/W", "alt"]),
        2,
    )
    yield shape(
        "degrees apart letters bare",
        lines_of([columns[0], lat, ["N"] * N, lon, ["E"] * N, up], ","),
        1,
        meant={"--columns": "name=1,latitude=2,longitude=4,height=6"},
    )
    for words in (
        ["φ", "λ", "h"],
        ["B", "L", "H"],
        ["Lat.", "Long.", "Hell"],
        ["GPSLatitude", "GPSLongitude", "GPSAltitude"],
        ["lat_dd", "lon_dd", "hae"],
        ["Latitud", "Longitud", "Altura elip."],
        ["Szerokość", "Długość", "Wysokość"],
        ["Широта", "Долгота", "Высота"],
        ["纬度", "经度", "高程"],
        ["緯度", "経度", "楕円体高"],
        ["Enlem", "Boylam", "Yükseklik"],
        ["Zeměpisná šířka", "Zeměpisná délka", "Výška"],
        ["Breddegrad", "Lengdegrad", "Høyde"],
        ["Leveys", "Pituus", "Korkeus"],
        ["Y_lat", "X_lon", "Z"],
        ["Breitengrad", "Längengrad", "Höhe ell."],
    ):
        yield shape(
            f"degrees words {words[0]}",
            lines_of([columns[0], lat, lon, up], ",", ["Name", *words]),
            2,
            meant={"--columns": "name=1,latitude=2,longitude=3,height=4"},
        )
    milli = [[f"{round(float(v) * 1e9):d}" for v in column] for column in (lat, lon)]
    rise = [f"{round(float(v) * 1000):d}" for v in up]
    yield shape(
        "degrees whole numbers",
        lines_of([columns[0], *milli, rise], ",", ["name", "lat_1e-9", "lon_1e-9", "alt_mm"]),
        2,
        meant={"--angles": "1e-9"},
    )


def mixed_order() -> Iterator[Shape]:
    """Two sections, each with its own header known here."""
    truth, columns = cells_of("mixed")
    half = N // 2
    rows = lines_of(columns, ",").splitlines()
    other = lines_of([columns[i] for i in (0, 2, 1, 3, 4)], ",").splitlines()
    for a, b in (
        (USUAL, ["Point", "Northing", "Easting", "Height", "Code"]),
        (["Punkt", "Ost", "Nord", "Höhe", "Code"], ["Punkt", "Nord", "Ost", "Höhe", "Code"]),
        (["Punto", "Este", "Norte", "Cota", "Cod"], ["Punto", "Norte", "Este", "Cota", "Cod"]),
        (["Taškas", "Rytai", "Šiaurė", "Aukštis", "Kodas"], ["Taškas", "Šiaurė", "Rytai", "Aukštis", "Kodas"]),
    ):
        text = "\n".join([",".join(a), *rows[:half], ",".join(b), *other[half:]])
        points = {line + (line > 1 + half): place for line, place in made("", "", truth, 2).truth.items()}
        yield Shape(f"exports two orders {b[1]}", text.encode(), points, meant=EVERY)


def nobody_knows() -> Iterator[Shape]:
    """A header within the file whose words nobody knows, and the same columns behind it."""
    truth, columns = cells_of("nobody")
    rows = lines_of(columns, ",", USUAL).splitlines()
    for words in ("Pkt,Querachse,Hochachse,Zett,Art", "Xx,Aus,Ain,Augs,Kk", "# nr,we,ns,zz,aa"):
        text = "\n".join([*rows[:20], words, *rows[20:]])
        points = {line + (line > 20): place for line, place in made("", "", truth, 2).truth.items()}
        yield Shape(f"header nobody knows {words}", text.encode(), points, meant=EVERY)


def every_export() -> List[Shape]:
    """All families."""
    families = (negative, office, tables, clocks, other_systems, degrees_more, mixed_order, nobody_knows)
    return [shape for family in families for shape in family()]
