"""Survey files from further desks: languages, lists of programs, printed pages, marks behind and before numbers.

Words of other languages and forms of lists from memory, common practice, no source.
"""

from __future__ import annotations

from typing import Iterator, List, Tuple

from tests.core.file_shapes import Shape, Truth, by_line, columns_of, hash_of, lines_of, site
from tests.core.file_shapes_found import EVERY, USUAL, made

#: Header words: name, easting, northing, height, code.
HEADS = {
    "fi": ("Piste", "Itä", "Pohjoinen", "Korkeus", "Koodi"), "sv": ("Punkt", "Öst", "Norr", "Höjd", "Kod"),
    "th": ("จุด", "ตะวันออก", "เหนือ", "ระดับ", "รหัส"), "ms": ("Titik", "Timur", "Utara", "Aras", "Kod"),
    "sw": ("Nukta", "Mashariki", "Kaskazini", "Kimo", "Msimbo"), "fa": ("نقطه", "شرق", "شمال", "ارتفاع", "کد"),
    "hi": ("बिंदु", "पूर्व", "उत्तर", "ऊँचाई", "कोड"), "sq": ("Pika", "Lindje", "Veri", "Lartësia", "Kodi"),
    "eu": ("Puntua", "Ekialdea", "Iparraldea", "Altuera", "Kodea"), "mk": ("Точка", "Исток", "Север", "Висина", "Код"),
    "ga": ("Pointe", "Thoir", "Thuaidh", "Airde", "Cód"), "mn": ("Цэг", "Зүүн", "Хойд", "Өндөр", "Код"),
    "ka": ("წერტილი", "აღმოსავლეთი", "ჩრდილოეთი", "სიმაღლე", "კოდი"),
    "gis": ("PNT_ID", "X_COORD", "Y_COORD", "Z_COORD", "FEAT_CODE"),
    "long": ("Point identifier", "Easting coordinate", "Northing coordinate", "Reduced level", "Feature"),
}  # fmt: skip


def cells(label: str) -> Tuple[Truth, List[List[str]]]:
    truth = site(hash_of(label))
    return truth, list(columns_of(truth).values())


def languages() -> Iterator[Shape]:
    for language, head in HEADS.items():
        truth, columns = cells(language)
        yield made(f"desks language {language}", lines_of(columns, ";", head), truth, 2, meant=EVERY)


def marked_numbers() -> Iterator[Shape]:
    """Signs and letters before and behind numbers, as one cell."""
    for label, forms in {
        "letters behind": ("{}E", "{}N", "{}"), "letters before": ("E{}", "N{}", "{}"),
        "metres": ("{} m", "{} m", "{} m"), "metres of heights": ("{}", "{}", "{}m"),
        "apostrophe": ("'{}", "'{}", "'{}"), "quotes and blanks": ('" {} "', '" {} "', '" {} "'),
        "plus": ("+{}", "+{}", "+{}"), "zeros before": ("0{}", "0{}", "0{}"), "brackets": ("[{}]", "[{}]", "[{}]"),
    }.items():  # fmt: skip
        truth, columns = cells(label)
        columns[1:4] = [[form.format(one) for one in column] for form, column in zip(forms, columns[1:4])]
        yield made(f"desks {label}", lines_of(columns, ";", USUAL), truth, 2, meant=EVERY)
    truth, columns = cells("exponents")
    for sign in "Ede":
        columns[1:4] = [
            [f"{float(one):.12E}".replace("E", sign) for one in column]
            for column in list(columns_of(truth).values())[1:4]
        ]
        yield made(f"desks exponents {sign}", lines_of(columns, ",", USUAL), truth, 2, meant=EVERY)


def lists() -> Iterator[Shape]:
    """Lists of programs and of papers, a point a line."""
    for label, (form, above, below) in {
        "sql": ("INSERT INTO points VALUES ('{}', {}, {}, {});", "", ""),
        "latex": ("{} & {} & {} & {} \\\\", "name & easting & northing & height \\\\\n\\hline\n", "\\hline\n"),
        "matrix": ("{} {} {} {};", "points = [\n", "];\n"), "yaml": (
            "- {{name: {}, easting: {}, northing: {}, height: {}}}", "points:\n", ""),
        "tuples": ("('{}', {}, {}, {}),", "points = [\n", "]\n"),
        "markdown": ("| {} | {} | {} | {} |", "| name | easting | northing | height |\n|---|---|---|---|\n", ""),
        "org": ("| {} | {} | {} | {} |", "| name | easting | northing | height |\n|---+---+---+---|\n", ""),
        "grid": (
            "| {} | {} | {} | {} |",
            "+---+---+---+---+\n| name | easting | northing | height |\n+===+===+===+===+\n", "+---+---+---+---+\n"),
        "wkt": ("{};POINT Z ({} {} {})", "name;geom\n", ""), "wkt bare": ("POINT Z ({1} {2} {3})", "", ""),
        "ewkt": ("{};SRID=25832;POINT({} {} {})", "", ""), "at": ("{}@{},{},{}", "", ""),
        "colon": ("{}: {}, {}, {}", "", ""), "arrow": ("{} -> {} {} {}", "", ""),
        "csharp": ('new Point("{}", {}, {}, {}),', "", ""), "script": ("_point {1},{2},{3}", "", ""),
        "words": ("Point {} at {} E, {} N, height {}", "", ""),
    }.items():  # fmt: skip
        truth, columns = cells(label)
        rows = "".join(form.format(*row[:4]) + "\n" for row in zip(*columns))
        four = {"--columns": "name=1,easting=2,northing=3,height=4"}
        yield made(f"desks list {label}", above + rows + below, truth, 1 + above.count("\n"), meant=four)


def pages() -> Iterator[Shape]:
    """Printed pages, marks at their ends, and what stands around the table."""
    truth, columns = cells("pages")
    body = lines_of(columns, ";", USUAL).splitlines()
    for label, foot in {
        "eof": "EOF", "end": "*** END OF FILE ***", "count": "48 points", "count word": "Total points: 48",
        "signed": "Checked: A. Person, 9 April 2025", "substitute": "\x1a", "page": "Page 1 of 1",
    }.items():  # fmt: skip
        text = "\n".join([*body, foot]) + "\n"
        yield made(f"desks foot {label}", text, truth, 2, meant=EVERY)
    out, where = [], []
    for i, line in enumerate(body[1:]):
        if i % 16 == 0:
            out += [f"Page {i // 16 + 1} of 3", body[0]]
        out.append(line)
        where.append(len(out))
    rows = dict(zip(where, zip(truth.east.tolist(), truth.north.tolist(), truth.height.tolist())))
    yield Shape("desks headers on each page", ("\n".join(out) + "\n").encode(), rows, meant=EVERY)
    for label, sign in (("dashes", "-"), ("equals", "="), ("underscores", "_")):
        text = "\n".join([body[0], sign * 60, *body[1:]]) + "\n"
        yield made(f"desks rule of {label}", text, truth, 3, meant=EVERY)
    text = "\n".join([body[0], *(f"{line};" for line in body[1:])]) + "\n"
    yield made("desks delimiter at the end of points alone", text, truth, 2, meant=EVERY)
    text = "\n".join(f";{line}" for line in body) + "\n"
    yield made(
        "desks delimiter before all", text, truth, 2, meant={"--columns": "name=2,easting=3,northing=4,height=5"}
    )


def orders() -> Iterator[Shape]:
    """Columns in other orders, beside others of their kind."""
    truth, (name, east, north, rise, code) = cells("orders")
    codes = by_line(truth.codes, 2)
    yield made(
        "desks north first", lines_of([name, north, rise, east], ",", ["No", "North", "Level", "East"]), truth, 2
    )
    yield made("desks y x z", lines_of([name, east, north, rise], ";", ["Nr", "Y", "X", "Z"]), truth, 2,
               meant={"--columns": "name=1,easting=2,northing=3,height=4"})  # fmt: skip
    yield made("desks code first", lines_of([code, name, east, north, rise], ";", ["Code", *USUAL[:4]]), truth, 2,
               codes=codes)  # fmt: skip
    zeros = [f"{i + 1:05d}" for i in range(len(name))]
    yield made("desks zeros in names", lines_of([zeros, east, north, rise], ",", USUAL[:4]), truth, 2,
               names=by_line(zeros, 2))  # fmt: skip
    spoken = [f"Pt {i + 1}" for i in range(len(name))]
    yield made("desks blanks in names", lines_of([spoken, east, north, rise], ",", USUAL[:4]), truth, 2,
               names=by_line(spoken, 2))  # fmt: skip
    quoted = [f'"P,{i + 1}"' for i in range(len(name))]
    yield made("desks commas in names", lines_of([quoted, east, north, rise], ",", USUAL[:4]), truth, 2,
               names=by_line([f"P,{i + 1}" for i in range(len(name))], 2))  # fmt: skip
    rms = [f"{8 + i % 5}" for i in range(len(name))]
    yield made("desks mm of sigmas", lines_of([name, east, north, rise, rms, rms], ",", [
        *USUAL[:4], "HRMS (mm)", "VRMS (mm)"]), truth, 2)  # fmt: skip
    step = [f"{i * 0.5:.2f}" for i in range(len(name))]
    text = lines_of([step, name, east, north, rise], ";", ["Chainage", *USUAL[:4]])
    meant = {"--columns": "name=2,easting=3,northing=4,height=5"}
    yield made("desks chainage beside", text, truth, 2, meant=meant)
    yield made("desks name last, bare", lines_of([east, north, rise, name], " "), truth, 1,
               meant={"--columns": "easting=1,northing=2,height=3,name=4"})  # fmt: skip
    both = [f"{float(one) + 46.2:.3f}" for one in rise]
    yield made("desks both heights", lines_of([name, east, north, both, rise], ";", [
        *USUAL[:3], "Ellipsoidal height", "Orthometric height"]), truth, 2)  # fmt: skip


def every_of_desks() -> List[Shape]:
    return [*languages(), *marked_numbers(), *lists(), *pages(), *orders()]
