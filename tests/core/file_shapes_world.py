"""Survey files as they are met in many countries and from many hands: spreadsheets, printed tables, logs, exports of
collectors, lists for programs, set-out reports, point clouds, tables of web pages and of programming languages.

Words of other languages are those of dictionaries (from memory).
"""

from __future__ import annotations

import json
from typing import Any, Dict, Iterator, List, Tuple

import numpy as np

from tests.core.file_shapes import (
    N,
    Shape,
    Truth,
    by_line,
    columns_of,
    decimals,
    fixed,
    hash_of,
    lines_of,
    site,
    truth_of,
)

USUAL = ["Point", "Easting", "Northing", "Height", "Code"]
EVERY = {"--columns": "name=1,easting=2,northing=3,height=4,code=5"}


def made(label: str, text: str, truth: Truth, first: int, encoding: str = "utf-8", **more: Any) -> Shape:
    """A shape with one point a line from ``first`` on."""
    return Shape(f"world {label}", text.encode(encoding), truth_of(truth, first, more.pop("skip", ())), **more)


def degrees_of(truth: Truth, first: int) -> Dict[int, Tuple[float, float, float]]:
    rows = zip(truth.longitude.tolist(), truth.latitude.tolist(), truth.height.tolist())
    return {first + i: row for i, row in enumerate(rows)}


def whole(seed: int) -> Tuple[Truth, List[List[str]]]:
    truth = site(seed)
    return truth, list(columns_of(truth).values())


#: Header words: name, easting, northing, height, code.
HEADS = {
    "no": ("Punkt", "Øst", "Nord", "Høyde", "Temakode"),
    "is": ("Punktur", "Austur", "Norður", "Hæð", "Kóði"),
    "sk": ("Číslo bodu", "Východ", "Sever", "Výška", "Kód"),
    "hr": ("Točka", "Istok", "Sjever", "Visina", "Kod"),
    "sl": ("Točka", "Vzhod", "Sever", "Višina", "Koda"),
    "hu": ("Pontszám", "Kelet", "Észak", "Magasság", "Kód"),
    "ro": ("Punct", "Est", "Nord", "Altitudine", "Cod"),
    "tr": ("Nokta No", "Sağa", "Yukarı", "Kot", "Açıklama"),
    "el": ("Σημείο", "Ανατολή", "Βορράς", "Υψόμετρο", "Κωδικός"),
    "et": ("Punkt", "Ida", "Põhi", "Kõrgus", "Kood"),
    "lv": ("Punkts", "Austrumi", "Ziemeļi", "Augstums", "Kods"),
    "lt": ("Taškas", "Rytai", "Šiaurė", "Aukštis", "Kodas"),
    "uk": ("Точка", "Схід", "Північ", "Висота", "Код"),
    "bg": ("Точка", "Изток", "Север", "Височина", "Код"),
    "sr": ("Тачка", "Исток", "Север", "Висина", "Код"),
    "zh": ("点号", "东坐标", "北坐标", "高程", "编码"),
    "ko": ("점번호", "동좌표", "북좌표", "표고", "코드"),
    "id": ("Titik", "Timur", "Utara", "Elevasi", "Kode"),
    "vi": ("Điểm", "Đông", "Bắc", "Cao độ", "Mã"),
    "br": ("Ponto", "Coord. Leste", "Coord. Norte", "Cota", "Descrição"),
    "ca": ("Punt", "Est", "Nord", "Cota", "Codi"),
    "af": ("Punt", "Oos", "Noord", "Hoogte", "Kode"),
    "ja": ("点名", "東座標", "北座標", "標高", "コード"),
    "he": ("נקודה", "מזרח", "צפון", "גובה", "קוד"),
    "ar": ("نقطة", "شرق", "شمال", "ارتفاع", "رمز"),
    "mx": ("Pto.", "Este (m)", "Norte (m)", "Elev. (m)", "Descripción"),
}


def languages() -> Iterator[Shape]:
    for language, head in HEADS.items():
        truth, columns = whole(hash_of(language))
        for delimiter in (";", "\t"):
            yield made(
                f"language {language} {delimiter!r}",
                lines_of(columns, delimiter, head),
                truth,
                2,
                codes=by_line(truth.codes, 2),
                names=by_line(truth.names, 2),
                meant=EVERY,
            )


def spreadsheets() -> Iterator[Shape]:
    """What spreadsheets leave around a table."""
    for sign in ";,\t":
        truth, columns = whole(hash_of("sep" + sign))
        yield made(f"sep line {sign!r}", f"sep={sign}\n" + lines_of(columns, sign, USUAL), truth, 3)
    truth, columns = whole(401)
    group = ["", "Position", "", "Level", ""]
    yield made(
        "group row above", lines_of(columns, ";", group).replace("\n", "\n" + ";".join(USUAL) + "\n", 1), truth, 3
    )
    text = lines_of(columns, ";", USUAL)
    blank = "\n".join(line if i % 7 else line + "\n;;;;" for i, line in enumerate(text.split("\n")))
    lines = [i + 1 for i, line in enumerate(blank.split("\n")) if line and line[0].isdigit()]
    yield Shape("world empty rows between", blank.encode(), dict(zip(lines, truth_of(truth, 0).values())))
    yield made(
        "index without a word",
        lines_of([[str(i) for i in range(N)], *columns], ",", ["", *USUAL]),
        truth,
        2,
        names=by_line(truth.names, 2),
    )
    yield made(
        "row numbers and names",
        lines_of([[str(i + 1) for i in range(N)], *columns], ";", ["No.", "Point name", *USUAL[1:]]),
        truth,
        2,
        names=by_line(truth.names, 2),
    )
    head = ",".join(["Point", '"Easting\n(m)"', '"Northing\n(m)"', '"Height\n(m)"', "Code"])
    yield made("words of two lines in quotes", head + "\n" + lines_of(columns, ","), truth, 5, meant=EVERY)
    text = lines_of(columns, ",", USUAL).replace("\n", ",\n").replace("Code,\n", "Code\n", 1)
    yield made("a sign more in each line", text, truth, 2, codes=by_line(truth.codes, 2), meant=EVERY)
    named = [[f'"A,{name}"' for name in columns[0]], *columns[1:]]
    yield made(
        "names with a comma",
        lines_of(named, ",", USUAL),
        truth,
        2,
        names=by_line([f"A,{name}" for name in truth.names], 2),
    )
    yield made("unicode text", "\ufeff" + lines_of(columns, "\t", USUAL).replace("\n", "\r\n"), truth, 2, "utf-16-le")
    text = lines_of(columns, ";", USUAL) + ";;;;\nCount;48;;;\n"
    yield made("a count below", text, truth, 2)
    comma = [columns[0], *[[word.replace(".", ",") for word in column] for column in columns[1:4]], columns[4]]
    yield made(
        "decimal commas quoted", lines_of([[f'"{word}"' for word in column] for column in comma], ",", USUAL), truth, 2
    )
    yield made(
        "nonbreaking words",
        lines_of(columns, ";", ["Point\u00a0No.", "Easting\u00a0(m)", "Northing\u00a0(m)", "Height\u00a0(m)", "Code"]),
        truth,
        2,
    )
    serial = [f"{45756.2949 + i / 86400:.8f}" for i in range(N)]
    yield made(
        "days since 1900",
        lines_of([*columns, serial], ";", [*USUAL, "Time"]),
        truth,
        2,
        time=by_line([(45756.2949 - 25569) * 86400 + i for i in range(N)], 2),
    )


def printed() -> Iterator[Shape]:
    """Tables for people: lines of dashes, pages, boxes."""
    truth, columns = whole(411)
    table = fixed(columns, USUAL).split("\n")
    table.insert(1, "-" * len(table[0]))
    yield made("a line of dashes", "\n".join(table), truth, 3, codes=by_line(truth.codes, 3), meant=EVERY)
    table.insert(0, "=" * 30)
    table.insert(0, "LIST OF COORDINATES          PAGE 1")
    yield made("a title and dashes", "\n".join(table), truth, 5, meant=EVERY)
    bars = ["│ " + " │ ".join(row) + " │" for row in zip(*columns)]
    head = "│ " + " │ ".join(USUAL) + " │"
    yield made(
        "a box",
        "\n".join(["┌" + "─" * 40 + "┐", head, "├" + "─" * 40 + "┤", *bars, "└" + "─" * 40 + "┘"]) + "\n",
        truth,
        4,
        meant={"--columns": "name=2,easting=3,northing=4,height=5,code=6"},
    )
    pages = []
    for i, row in enumerate(zip(*columns)):
        if i % 20 == 0:
            pages += [f"\fPage {i // 20 + 1}", "  ".join(USUAL)]
        pages.append("  ".join(word.replace(" ", "") for word in row))
    lines = [i + 1 for i, line in enumerate(pages) if line[0].isdigit()]
    yield Shape(
        "world pages", ("\n".join(pages) + "\n").encode(), dict(zip(lines, truth_of(truth, 0).values())), meant=EVERY
    )
    yield made(
        "dots as leaders",
        "\n".join(f"{a:.<12} {b} {c} {d}" for a, b, c, d in zip(*columns[:4])) + "\n",
        truth,
        1,
        meant=EVERY,
    )
    for mark in (" / ", " - "):
        text = "\n".join(f"{a}: {mark.join((b, c, d))}" for a, b, c, d in zip(*columns[:4])) + "\n"
        yield made(f"{mark.strip()} between", text, truth, 1, meant={**EVERY, "--delimiter": mark.strip()})
    text = "\n".join(f"{a} ({b}, {c}, {d})" for a, b, c, d in zip(*columns[:4])) + "\n"
    yield made("coordinates in brackets", text, truth, 1, meant=EVERY)


def collectors() -> Iterator[Shape]:
    """Exports of data collectors with all that a receiver says."""
    truth, columns = whole(421)
    more: Dict[str, List[str]] = {
        "Latitude": [f"{v:.9f}" for v in truth.latitude],
        "Longitude": [f"{v:.9f}" for v in truth.longitude],
        "Ellipsoidal height": decimals(truth.height + 46.0),
        "HRMS": ["0.012"] * N,
        "VRMS": ["0.018"] * N,
        "Status": ["FIXED"] * N,
        "Satellites": ["21"] * N,
        "PDOP": ["1.4"] * N,
        "Age": ["1.0"] * N,
        "Antenna height": ["2.000"] * N,
        "Date": ["2025-04-09"] * N,
        "Time": ["07:06:02"] * N,
        "Base ID": ["B1"] * N,
    }
    order = ["Point", "Code", "Easting", "Northing", "Height", *more]
    cells = dict(zip(USUAL, columns), **more)
    for sign in ",;\t":
        yield made(
            f"collector {sign!r}",
            lines_of([cells[word] for word in order], sign, order),
            truth,
            2,
            codes=by_line(truth.codes, 2),
            meant={"--heights-of": "ground"},
        )
    for first, second, up in (
        ("Local Easting", "Local Northing", "Local Height"),
        ("Grid E", "Grid N", "Elev"),
        ("E (UTM)", "N (UTM)", "H (MSL)"),
        ("ETRS89_E", "ETRS89_N", "DHHN2016_H"),
        ("coord_e", "coord_n", "coord_h"),
        ("pos.e", "pos.n", "pos.h"),
        ("East(m)", "North(m)", "Elev(m)"),
        ("EASTING (METRES)", "NORTHING (METRES)", "LEVEL (METRES)"),
        ("Y (East)", "X (North)", "Z"),
        ("X/Easting", "Y/Northing", "Z/Elevation"),
        ("E-coord", "N-coord", "H-coord"),
        ("Easting_X", "Northing_Y", "Elevation_Z"),
        ("measured E", "measured N", "measured H"),
        ("e:float", "n:float", "h:float"),
        ("utm_e", "utm_n", "alt"),
        ("easting/m", "northing/m", "height/m"),
        ("East [mtr]", "North [mtr]", "Elev. [mtr]"),
        ("x(e)", "y(n)", "z(h)"),
    ):
        truth, columns = whole(hash_of(first + up))
        yield made(f"words {first}", lines_of(columns, ",", ["Id", first, second, up, "Desc"]), truth, 2, meant=EVERY)
    truth, columns = whole(433)
    for head in (
        ["Pt", "Design E", "Design N", "Design H", "Measured E", "Measured N", "Measured H"],
        ["Pt", "E plan", "N plan", "H plan", "E", "N", "H"],
        ["Pt", "E_soll", "N_soll", "H_soll", "E_ist", "N_ist", "H_ist"],
        ["Pt", "E theor.", "N theor.", "H theor.", "E mes.", "N mes.", "H mes."],
    ):
        drawn = [
            decimals(np.round(values + off, 2))
            for values, off in ((truth.east, 0.03), (truth.north, -0.02), (truth.height, 0.4))
        ]
        yield made(
            f"set out {head[1]}",
            lines_of([columns[0], *drawn, *columns[1:4]], ",", head),
            truth,
            2,
            meant={"--columns": "name=1,easting=5,northing=6,height=7"},
        )
    deltas = [[f"0.0{i % 9}" for i in range(N)] for _ in range(3)]
    for words in (
        ["dE", "dN", "dH"],
        ["Delta E", "Delta N", "Delta H"],
        ["ΔE", "ΔN", "ΔH"],
        ["sE", "sN", "sH"],
        ["E sd", "N sd", "H sd"],
    ):
        yield made(
            f"beside {words[0]}",
            lines_of([*columns[:4], *deltas], ",", ["Pt", "E", "N", "H", *words]),
            truth,
            2,
            meant={"--columns": "name=1,easting=2,northing=3,height=4"},
        )
    both = [decimals(truth.height + 46.0), columns[3]]
    for words in (
        ["h", "H"],
        ["Height", "Elevation"],
        ["h ell", "H"],
        ["Ell. height", "Ortho height"],
        ["Height (ellipsoid)", "Height (geoid)"],
    ):
        yield made(
            f"two heights {words[0]}",
            lines_of([*columns[:3], *both], ",", ["Pt", "E", "N", *words]),
            truth,
            2,
            meant={"--columns": "name=1,easting=2,northing=3,height=5"},
        )
    undulation = ["46.000"] * N
    for word in ("Geoid height", "Undulation", "Geoid separation", "N geoid"):
        yield made(
            f"beside {word}",
            lines_of([*columns[:4], undulation], ",", ["Pt", "E", "N", "H", word]),
            truth,
            2,
            meant=EVERY,
        )


def programs() -> Iterator[Shape]:
    """Tables that programs write for programs."""
    truth, columns = whole(441)
    for form, label in (
        ("{}, {}, {}", "WKT"),
        ("{} {} {}", "POINT Z ({})"),
        ("{} {} {}", "SRID=25832;POINT Z({})"),
        ("{} {} {}", "POINTZ({})"),
    ):
        if label == "WKT":
            continue
        places = [label.format(form.format(*row)) for row in zip(*columns[1:4])]
        for order in (("wkt", "name", "code"), ("name", "wkt", "code")):
            cells = {"wkt": [f'"{place}"' for place in places], "name": columns[0], "code": columns[4]}
            yield made(
                f"{label} {order[0]}",
                lines_of([cells[word] for word in order], ",", [w.upper() if w == "wkt" else w for w in order]),
                truth,
                2,
                names=by_line(truth.names, 2),
                codes=by_line(truth.codes, 2),
            )
    rows = [dict(zip(("name", "easting", "northing", "height", "code"), row)) for row in zip(*columns)]
    numbers = [{**row, **{k: float(row[k]) for k in ("easting", "northing", "height")}} for row in rows]
    yield made(
        "json lines",
        "\n".join(json.dumps(row) for row in numbers) + "\n",
        truth,
        2,
        codes=by_line(truth.codes, 2),
        suffix=".json",
    )
    yield Shape(
        "world json list", json.dumps(numbers).encode(), truth_of(truth, 2), by_line(truth.codes, 2), suffix=".json"
    )
    yield Shape(
        "world json inside",
        json.dumps({"job": "Meadow", "points": rows}, indent=1).encode(),
        truth_of(truth, 2),
        by_line(truth.codes, 2),
        suffix=".json",
    )
    cells = "".join("<tr>" + "".join(f"<td>{word}</td>" for word in row) + "</tr>\n" for row in zip(*columns))
    head = "<tr>" + "".join(f"<th>{word}</th>" for word in USUAL) + "</tr>\n"
    page = f"<html><title>Points</title><body><h1>Job</h1><table border=1>\n{head}{cells}</table></body></html>\n"
    yield Shape("world page", page.encode(), truth_of(truth, 2), by_line(truth.codes, 2), suffix=".xls")
    named = [f'"{name}"' for name in truth.names]
    yield made(
        "row names without a word",
        lines_of([named, *columns[1:4]], " ", ['"E"', '"N"', '"H"']),
        truth,
        2,
        meant={"--columns": "name,easting,northing,height"},
    )
    yield made("front matter", "---\njob: Meadow\nunit: m\n---\n" + lines_of(columns, ",", USUAL), truth, 6)
    exponents = [[f"{float(word):.10E}".replace("E", "D") for word in column] for column in columns[1:4]]
    yield made("exponents with D", lines_of([columns[0], *exponents], ",", USUAL[:4]), truth, 2, meant=EVERY)
    zeros = [[word.rjust(14, "0") for word in column] for column in columns[1:4]]
    yield made("zeros before", lines_of([columns[0], *zeros], ",", USUAL[:4]), truth, 2)
    for glue in (("E", "N", "Z"), ("X", "Y", "Z"), ("Y", "X", "Z")):
        text = (
            "\n".join(" ".join(f"{sign}{word}" for sign, word in zip(glue, row)) for row in zip(*columns[1:4])) + "\n"
        )
        yield made(
            f"letters before numbers {glue[0]}", text, truth, 1, meant={"--columns": "easting=1,northing=2,height=3"}
        )
    letters = [[word + sign for word in column] for column, sign in zip(columns[1:3], "EN")]
    yield made(
        "letters behind numbers", lines_of([columns[0], *letters, columns[3]], ",", USUAL[:4]), truth, 2, meant=EVERY
    )
    yield made(
        "a cloud",
        lines_of(
            [*columns[1:4], ["120"] * N, ["88"] * N, ["90"] * N, ["77"] * N], " ", ["//X", "Y", "Z", "I", "R", "G", "B"]
        ),
        truth,
        2,
        meant={"--columns": "easting=1,northing=2,height=3"},
    )
    yield made(
        "a cloud without words",
        lines_of([*columns[1:4], ["120"] * N, ["88"] * N, ["90"] * N, ["77"] * N], " "),
        truth,
        1,
        meant={"--columns": "easting=1,northing=2,height=3"},
    )
    yield made(
        "three columns", lines_of(columns[1:4], " "), truth, 1, meant={"--columns": "easting=1,northing=2,height=3"}
    )
    text = "[HEADER]\nversion=2\n[POINTS]\n" + lines_of(columns, ",", USUAL) + "[END]\n"
    yield made("parts in brackets", text, truth, 5, meant=EVERY)
    yield made("begin and end", "BEGIN POINTS\n" + lines_of(columns, ",") + "END POINTS\n", truth, 2, meant=EVERY)
    braces = "\n".join("{" + ", ".join(row) + "}," for row in zip(*columns[:4])) + "\n"
    yield made("braces", braces, truth, 1, meant=EVERY)
    yield made("control z", lines_of(columns, ",", USUAL) + "\x1a", truth, 2)
    mixed = lines_of(columns, ",", USUAL).split("\n")
    yield made(
        "ends of both kinds", "".join(line + ("\r\n" if i % 2 else "\n") for i, line in enumerate(mixed)), truth, 2
    )


def logs() -> Iterator[Shape]:
    """Positions that programs log, with times before them and much behind."""
    truth, columns = whole(451)
    clock = [f"2025/04/09 07:06:{i % 60:02d}.{i:03d}" for i in range(N)]
    cells = [
        [f"{v:.9f}" for v in truth.latitude],
        [f"{v:.9f}" for v in truth.longitude],
        decimals(truth.height),
        ["1"] * N,
        ["18"] * N,
        ["0.0102"] * N,
        ["0.0093"] * N,
        ["0.0204"] * N,
    ]
    body = "\n".join(" ".join(row) for row in zip(clock, *cells)) + "\n"
    head = "%  GPST                  latitude(deg) longitude(deg)  height(m)   Q  ns   sdn(m)   sde(m)   sdu(m)"
    for above in (f"% program : a\n{head}\n", f"{head}\n", ""):
        first = above.count("\n") + 1
        yield Shape(
            f"world positions {first}",
            (above + body).encode(),
            degrees_of(truth, first),
            geographic=True,
            precision=2e-8,
            suffix=".pos",
            meant={"--columns": "date=1,time=2,latitude=3,longitude=4,height=5"},
        )
    for words in (
        ["time", "lat", "lng", "alt"],
        ["t_s", "GPS Latitude", "GPS Longitude", "GPS Altitude"],
        ["UTC", "Lat(N)", "Long(E)", "Alt(m)"],
        ["stamp", "latitude_deg", "longitude_deg", "altitude_m"],
        ["Zeit", "Breite WGS84", "Länge WGS84", "Höhe"],
    ):
        stamps = [f"{25562.25 + i:.2f}" for i in range(N)]
        attitude = [[f"{0.1 * (i % 5):.2f}" for i in range(N)] for _ in range(3)]
        text = lines_of([stamps, cells[0], cells[1], cells[2], *attitude], ",", [*words, "roll", "pitch", "yaw"])
        yield Shape(f"world path {words[1]}", text.encode(), degrees_of(truth, 2), geographic=True, precision=2e-8)
    for prefix in ("RTK FIX ", "12:00:01 ", "> "):
        text = "\n".join(f"{prefix}E={b} N={c} H={d}" for b, c, d in zip(*columns[1:4])) + "\n"
        yield made(f"keys behind {prefix}", text, truth, 1, meant={"--columns": "easting=2,northing=3,height=4"})


def angles() -> Iterator[Shape]:
    """Latitudes and longitudes with sides and signs in more ways."""

    def parts(value: float) -> Tuple[int, int, float]:
        total = round(abs(value) * 3600, 6)
        return int(total // 3600), int(total % 3600 // 60), total % 60

    def minutes(value: float) -> str:
        d, m, s = parts(value)
        return f"{d}° {m + s / 60:.7f}'"

    def dashes(value: float) -> str:
        d, m, s = parts(value)
        return f"{d}-{m:02d}-{s:08.5f}"

    def spaced(value: float) -> str:
        d, m, s = parts(value)
        return f"{d}° {m:02d}′ {s:08.5f}″"

    def words(value: float) -> str:
        d, m, s = parts(value)
        return f"{d}d{m:02d}m{s:08.5f}s"

    def plain(value: float) -> str:
        return f"{value:.9f}"

    truth = site(461)
    for write, side in (
        (plain, "N51"),
        (plain, "51N"),
        (plain, "51 N"),
        (plain, "51° N"),
        (minutes, "51 N"),
        (dashes, "51N"),
        (spaced, "51 N"),
        (words, "51 N"),
        (dashes, "N51"),
        (spaced, "N 51"),
        (minutes, "51"),
    ):
        cells = []
        for values, letter in ((truth.latitude, "N"), (truth.longitude, "E")):
            form = side.replace("N", letter)
            cells.append([form.replace("51", write(v)) for v in values])
        for headed in (True, False):
            text = lines_of(
                [truth.names, *cells, decimals(truth.height)],
                ";",
                ["Name", "Latitude", "Longitude", "Height"] if headed else None,
            )
            yield Shape(
                f"world angles {write.__name__} {side} {headed}",
                text.encode(),
                degrees_of(truth, 1 + headed),
                geographic=True,
                precision=2e-8,
                meant={"--columns": "name=1,latitude=2,longitude=3,height=4"},
            )
    for order in ((2, 1), (1, 2)):
        cells = [[plain(v) for v in truth.latitude], [plain(v) for v in truth.longitude]]
        chosen = [cells[i - 1] for i in order]
        head = [("Lat", "Lon")[i - 1] for i in order]
        text = lines_of([truth.names, *chosen, decimals(truth.height)], ",", ["Name", *head, "Height"])
        yield Shape(f"world order {head[0]}", text.encode(), degrees_of(truth, 2), geographic=True, precision=2e-8)


def sides() -> Iterator[Shape]:
    """Degrees whose header says on which side of zero they are."""
    truth, columns = whole(501)
    cells = [[f"{v:.9f}" for v in values] for values in (truth.latitude, truth.longitude)]
    for words, south, west in (
        (("Latitude (N)", "Longitude (W)"), 1, -1),
        (("Lat N", "Lon W"), 1, -1),
        (("Latitude North", "Longitude West"), 1, -1),
        (("N Lat", "W Long"), 1, -1),
        (("Lat (°N)", "Long (°W)"), 1, -1),
        (("Latitude (S)", "Longitude (E)"), -1, 1),
        (("S Lat", "E Long"), -1, 1),
        (("Latitud S", "Longitud O"), 1, 1),
    ):
        if words[1].endswith("O"):
            continue
        text = lines_of([columns[0], *cells, columns[3]], ",", ["Name", *words, "Height"])
        turned = {line: (lon * west, lat * south, up) for line, (lon, lat, up) in degrees_of(truth, 2).items()}
        yield Shape(
            f"world sides {words[1]} {words[0]}", text.encode(), turned, geographic=True, precision=2e-8, crs=None
        )


def said_within() -> Iterator[Shape]:
    """Units that a line within the data says from there on."""
    truth, columns = whole(503)
    half = N // 2
    for line, unit in (
        ("# Heights in feet", "ft"),
        ("Heights in feet;;;", "ft"),
        ("# heights: cm", "cm"),
        ("Z in mm", "mm"),
    ):
        rise = [*columns[3][:half], *decimals(truth.height, unit, 4)[half:]]
        for head in (USUAL[:4], ["Point", "Easting", "Northing", "Height (m)"]):
            text = lines_of([*columns[:3], rise], ";", head).split("\n")
            text.insert(1 + half, line)
            points = {at if at < 2 + half else at + 1: place for at, place in truth_of(truth, 2).items()}
            yield Shape(
                f"world within {line} {head[3]}", "\n".join(text).encode(), points, meant={"--height-unit": unit}
            )


def hard() -> Iterator[Shape]:
    """Columns that hold nothing, remarks behind numbers, lines that count columns or give totals, other digits."""
    truth, columns = whole(505)
    empty = [""] * N
    codes = by_line(truth.codes, 2)
    angles = [[f"{v:.9f}" for v in values] for values in (truth.latitude, truth.longitude)]
    yield made(
        "an empty height",
        lines_of([*columns[:3], empty, *columns[3:]], ",", ["Pt", "E", "N", "Elevation", "Height", "Code"]),
        truth,
        2,
        codes=codes,
    )
    yield made(
        "a height of the ellipsoid alone",
        lines_of([*columns[:3], empty, columns[3]], ",", ["Pt", "E", "N", "H", "Ellipsoidal height"]),
        truth,
        2,
    )
    yield made(
        "empty degrees",
        lines_of([columns[0], empty, empty, *columns[1:]], ",", ["Pt", "Latitude", "Longitude", *USUAL[1:]]),
        truth,
        2,
    )
    text = lines_of(
        [columns[0], *angles, empty, empty, columns[3]], ",", ["Pt", "Latitude", "Longitude", "E", "N", "H"]
    )
    yield Shape("world empty plan", text.encode(), degrees_of(truth, 2), geographic=True, precision=2e-8)
    for sign in ("#", "//", ";", "!", "%"):
        text = "\n".join(", ".join(row) + f" {sign} kerb {i}" for i, row in enumerate(zip(*columns[:4]))) + "\n"
        yield made(f"remarks behind {sign}", text, truth, 1, meant=EVERY)
        yield made(f"remarks behind {sign} headed", ", ".join(USUAL[:4]) + "\n" + text, truth, 2)
    for first, mark in ((0x0660, "."), (0x06F0, "\u066b"), (0xFF10, "\uff0e"), (0x0966, ".")):
        other = {**{ord(str(i)): chr(first + i) for i in range(10)}, ord("."): mark}
        cells = [[word.translate(other) for word in column] for column in columns[1:4]]
        yield made(f"digits {first:x}", lines_of([columns[0], *cells], ";", USUAL[:4]), truth, 2, meant=EVERY)
    text = "".join(f"{a}\n{b} {c} {d}\n" for a, b, c, d in zip(*columns[:4]))
    points = {2 * line: place for line, place in truth_of(truth, 1).items()}
    yield Shape("world two lines a point", text.encode(), points, meant={"--columns": "easting=1,northing=2,height=3"})
    cells = [[f'="{word}"' for word in column] for column in columns[:4]]
    yield made("cells as text", lines_of([*cells, columns[4]], ",", USUAL), truth, 2, codes=codes)
    single = [[f"'{word}'" for word in column] for column in columns]
    yield made(
        "single quotes",
        lines_of(single, ",", [f"'{word}'" for word in USUAL]),
        truth,
        2,
        codes=codes,
        names=by_line(truth.names, 2),
    )
    for gap in (";;", "\t\t", ",\t"):
        yield made(f"delimiter {gap!r}", lines_of(columns, gap, USUAL), truth, 2)
    for sign in "\t;":
        rows = lines_of(columns, sign, USUAL).split("\n")
        yield made(f"{sign!r} before all", "\n".join(sign + row for row in rows if row) + "\n", truth, 2, codes=codes)
    for above in ("1;2;3;4;5", "A;B;C;D;E", "(1);(2);(3);(4);(5)"):
        yield made(
            f"{above} above", f"{above}\n" + lines_of(columns, ";", USUAL), truth, 3, codes=by_line(truth.codes, 3)
        )
    for below in ("1;2;3;4;5", "string;double;double;double;string", "Text(10);F(12,3);F(12,3);F(8,3);Text(8)"):
        rows = lines_of(columns, ";", USUAL).split("\n")
        rows.insert(1, below)
        yield made(f"{below} below", "\n".join(rows), truth, 3, codes=by_line(truth.codes, 3))
    yield made(
        "words of two lines",
        "Point;Grid;Grid;Grid;Field\nNo.;Easting;Northing;Height;Code\n" + lines_of(columns, ";"),
        truth,
        3,
    )
    yield made(
        "header of the other order",
        lines_of([columns[0], columns[2], columns[1], columns[3]], ";", ["Pt", "Easting", "Northing", "Elev"]),
        truth,
        2,
        meant={"--columns": "name=1,northing=2,easting=3,height=4"},
    )
    values = [np.array([float(word) for word in column]) for column in columns[1:4]]
    for word, how in (
        ("Mean", np.mean),
        ("Average", np.mean),
        ("Mittelwert", np.mean),
        ("Sum", np.sum),
        ("Min", np.min),
        ("Max", np.max),
        ("Total", np.sum),
    ):
        last = ";".join([word, *(f"{how(one):.3f}" for one in values)])
        yield made(f"a line of {word}", lines_of(columns[:4], ";", USUAL[:4]) + last + "\n", truth, 2)
    yield made("a zone", lines_of([columns[0], ["32"] * N, *columns[1:4]], ",", ["Pt", "Zone", *USUAL[1:4]]), truth, 2)
    yield made(
        "a zone and band",
        lines_of([columns[0], ["32U"] * N, *columns[1:4]], ","),
        truth,
        1,
        meant={"--columns": "name=1,easting=3,northing=4,height=5"},
    )
    for unit, places in (("mm", 0), ("cm", 1), ("dm", 2), ("km", 6)):
        lengths = [decimals(one, unit, places) for one in (truth.east, truth.north, truth.height)]
        yield made(
            f"{unit} without a word",
            lines_of([columns[0], *lengths], ",", USUAL[:4]),
            truth,
            2,
            meant={"--unit": unit, "--height-unit": unit},
        )
    yield made(
        "heights in mm without a word",
        lines_of([*columns[:3], decimals(truth.height, "mm", 0)], ",", USUAL[:4]),
        truth,
        2,
        meant={"--height-unit": "mm"},
    )


def refused() -> List[Shape]:
    """Files that nobody can read right without other data: they are refused, with the reason."""
    from pyproj import Transformer

    truth, columns = whole(507)
    to_middle = Transformer.from_crs("EPSG:4937", "EPSG:4936", always_xy=True)
    middle = to_middle.transform(truth.longitude, truth.latitude, truth.height)
    cells = [[f"{v:.4f}" for v in values] for values in middle]
    found = [made("geocentric", lines_of([columns[0], *cells], ",", ["Pt", "X", "Y", "Z"]), truth, 2)]
    found.append(made("geocentric without words", lines_of([columns[0], *cells], ","), truth, 1, crs=None))
    zones = ["32"] * (N // 2) + ["33"] * (N - N // 2)
    found.append(
        made("two zones", lines_of([columns[0], zones, *columns[1:4]], ",", ["Pt", "Zone", *USUAL[1:4]]), truth, 2)
    )
    polar = [
        [f"{i * 3.1:.4f}" for i in range(N)],
        [f"{100 + 0.1 * i:.4f}" for i in range(N)],
        [f"{20 + 0.3 * i:.3f}" for i in range(N)],
    ]
    found.append(made("directions", lines_of([columns[0], *polar], ",", ["Pt", "Hz", "V", "SD"]), truth, 2))
    found.append(made("directions without words", lines_of([columns[0], *polar], ","), truth, 1))
    found.append(
        made(
            "µm", lines_of([*columns[:3], decimals(truth.height * 1e6, "m", 0)], ",", [*USUAL[:3], "H [µm]"]), truth, 2
        )
    )
    return found


def every_of_the_world() -> List[Shape]:
    """All families."""
    families = (languages, spreadsheets, printed, collectors, programs, logs, angles, sides, said_within, hard)
    return [shape for family in families for shape in family()]
