"""Survey files of kinds that a second tester found: units of plan and heights said apart, heights of the antenna by a
line above, several sets of coordinates, numbers divided or marked in odd ways, tables on their side.
"""

from __future__ import annotations

from typing import Iterator, List

import numpy as np

from tests.core.file_shapes import N, Shape, Truth, columns_of, decimals, hash_of, lines_of, site
from tests.core.file_shapes_found import degrees_of, made

HEAD = ["Pt", "E", "N", "Z"]
FOOT = 0.3048


def cells(truth: Truth, height: List[str] | None = None) -> List[List[str]]:
    columns = columns_of(truth)
    return [columns["name"], columns["easting"], columns["northing"], height or columns["height"]]


def raised(truth: Truth, by: float) -> List[str]:
    return decimals(truth.height + by)


def said_units() -> Iterator[Shape]:
    """Units of heights apart from those of the plan, in titles and comments."""
    feet = (
        "Horizontal units: metres, vertical units: feet", "# Vertical units: feet", "Elevation unit: ft",
        "Units: m (horizontal), ft (vertical)", "# heights in international feet, coordinates in metres",
        "Horizontal units: metres; vertical units: feet", "# Vertical unit = ft", "# plan: m | vertical: ft",
        "Elevations are in feet and coordinates in metres", "Einheit Lage: m, Einheit Höhe: ft",
        "# Unités: altitudes en pieds, coordonnées en mètres", "Unidades horizontales: m; unidades verticales: pies",
    )  # fmt: skip
    for line in feet:
        truth = site(hash_of(line))
        text = line + "\n" + lines_of(cells(truth, decimals(truth.height, "ft", 4)), ",", HEAD)
        yield made(f"units above {line}", text, truth, 3, meant={"--height-unit": "ft", "--units-from": "header"})
    for line, unit in (("# Vertical units: cm", "cm"), ("Höhen in mm, Lage in m", "mm"), ("; Einheit Höhe: dm", "dm")):
        truth = site(hash_of(line))
        text = line + "\n" + lines_of(cells(truth, decimals(truth.height, unit, 2)), ";", HEAD)
        yield made(f"units above {line}", text, truth, 3, meant={"--height-unit": unit, "--units-from": "header"})
    truth = site(5)
    text = "# Vertical units: feet\n# Units: metres\n" + lines_of(
        cells(truth, decimals(truth.height, "ft", 4)), ",", HEAD
    )
    yield made("units above of heights before those of all", text, truth, 4, meant={"--height-unit": "ft"})


def antennas() -> Iterator[Shape]:
    """Lines above that say what heights are of, and how high the pole was."""
    for lines in (
        "# Heights: antenna phase centre, antenna height 1.800 m",
        "Antenna height: 1.800 m\nHeights: antenna phase centre",
        "# heights are of the antenna\n# pole height = 1.80 m", "Höhen: Antenne; Antennenhöhe 1,80 m",
        "# altitudes: centre de phase\n# hauteur canne 1.80 m", "# Elevations refer to the APC, rod height 1800 mm",
    ):  # fmt: skip
        truth = site(hash_of(lines))
        text = lines + "\n" + lines_of(cells(truth, raised(truth, 1.8)), ",", HEAD)
        yield made(f"antenna above {lines}", text, truth, 3 + lines.count("\n"), meant={"--pole-height": "1.800"})
    for line in ("# Heights are of the antenna", "elevations: APC", "# Höhen der Antenne"):
        truth = site(hash_of(line))
        text = line + "\n" + lines_of(cells(truth, raised(truth, 2.0)), ",", HEAD)
        yield made(f"antenna without pole {line}", text, truth, 3, meant={"--pole-height": "2.000"})
    for line in ("Rod height = 1.80 m", "# antenna height 1.800 m", "# Pole height: 2.000 m", "Stabhöhe 1,80 m"):
        for of, up in (("ground", 0.0), ("antenna", 2.0 if "2.0" in line else 1.8)):
            truth = site(hash_of(line))
            text = line + "\n" + lines_of(cells(truth, raised(truth, up)), ";", HEAD)
            yield made(f"pole above {line} {of}", text, truth, 3, meant={"--heights-of": of})
    for line in ("# heights reduced to ground, pole height 1.8 m", "# base antenna height 1.234 m"):
        truth = site(hash_of(line))
        yield made(f"pole above {line}", line + "\n" + lines_of(cells(truth), ",", HEAD), truth, 3)


def two_heights() -> Iterator[Shape]:
    """Ellipsoidal and levelled heights side by side, by words or by running along."""
    for first, second in (
        ("h_ell", "H_ortho"), ("h ell", "H MSL"), ("Ell. height", "Orthometric height"), ("h_WGS84", "H_NN"),
        ("hell", "H_orthometric"), ("h (ellips.)", "Z ortho"),
    ):  # fmt: skip
        for turned in (False, True):
            truth = site(hash_of(first + second))
            high, low = raised(truth, 46.7), columns_of(truth)["height"]
            words, values = ([first, second], [high, low]) if not turned else ([second, first], [low, high])
            text = lines_of([*cells(truth)[:3], *values], ",", ["Pt", "E", "N", *words])
            meant = {"--columns": f"name=1,easting=2,northing=3,height={4 + (not turned)}"}
            yield made(f"two heights {words}", text, truth, 2, meant=meant)
    for first, second in (("Elevation", "Zadj"), ("h_ell", "Lvl2"), ("Z", "Zcorr"), ("Höhe", "Wert B")):
        truth = site(hash_of(second))
        text = lines_of([*cells(truth)[:3], raised(truth, 46.7), columns_of(truth)["height"]], ",",
                        ["Pt", "E", "N", first, second])  # fmt: skip
        meant = {"--columns": "name=1,easting=2,northing=3,height=5"}
        yield made(f"two heights {first} {second}", text, truth, 2, meant=meant)


def several_sets() -> Iterator[Shape]:
    """Designed and measured, raw and corrected, ground and grid coordinates of the same points."""
    for first, second in (
        ("", "As-built "), ("Design ", "Measured "), ("Soll-", "Ist-"), ("Raw ", "Corrected "), ("", "Staked "),
        ("Local ", "Grid "), ("Old ", "New "), ("Projet ", "Levé "), ("", "Check "),
    ):  # fmt: skip
        for order in ("ENZ", "NEZ", "YXH"):
            truth = site(hash_of(first + second + order))
            good = {"E": decimals(truth.east), "N": decimals(truth.north), "Z": columns_of(truth)["height"]}
            off = {"E": decimals(truth.east + 0.3), "N": decimals(truth.north - 0.2), "Z": raised(truth, 0.1)}
            signs = {"Y": "E", "X": "N", "H": "Z"}
            words = [f"{beside}{sign}" for beside in (first, second) for sign in order]
            values = [one[signs.get(sign, sign)] for one in (off, good) for sign in order]
            text = lines_of([columns_of(truth)["name"], *values], ";", ["Pt", *words])
            places = {signs.get(sign, sign): 5 + i for i, sign in enumerate(order)}
            roles = {"E": "easting", "N": "northing", "Z": "height"}
            named = sorted((place, roles[sign]) for sign, place in places.items())
            meant = {"--columns": "name=1," + ",".join(f"{role}={place}" for place, role in named)}
            yield made(f"sets {words}", text, truth, 2, meant=meant)
    for words in (["Ground E", "Ground N", "Grid E", "Grid N", "Z"], ["E_2023", "N_2023", "E_2024", "N_2024", "H"]):
        truth = site(hash_of(str(words)))
        values = [decimals(truth.east + 219.3), decimals(truth.north + 2284.9), *cells(truth)[1:]]
        text = lines_of([columns_of(truth)["name"], *values], ",", ["Pt", *words])
        meant = {"--columns": "name=1,easting=4,northing=5,height=6"}
        yield made(f"sets {words}", text, truth, 2, meant=meant)
    truth = site(8)
    steps = [["0.020"] * N, ["-0.030"] * N, ["0.100"] * N]
    text = lines_of([cells(truth)[0], *steps, *cells(truth)[1:]], ",", ["Pt", "dE", "dN", "dZ", "E", "N", "Z"])
    yield made("sets of which one is of differences", text, truth, 2)


def divided() -> Iterator[Shape]:
    """Line breaks in quotes, decimal commas among commas, two numbers in one column, parts of degrees."""
    for sign, notes in (
        (",", ("wet, slow", "two\nlines")),
        (";", ("a;b", "three\nlines\nhere")),
        ("\t", ("x", "y\nz")),
    ):
        for first in (True, False):
            truth = site(hash_of(sign + str(first)))
            rows, lines, at = [], {}, 2
            for i, row in enumerate(zip(*cells(truth))):
                note = f'"{notes[i % 2]}"'
                rows.append(sign.join([note, *row] if first else [*row, note]))
                lines[at] = (truth.east[i], truth.north[i], truth.height[i])
                at += 1 + notes[i % 2].count("\n")
            head = ["Note", *HEAD] if first else [*HEAD, "Note"]
            yield Shape(f"break in quotes {sign!r} {first}", "\n".join([sign.join(head), *rows, ""]).encode(), lines)
    for head in (HEAD, None, [*HEAD, "Code"]):
        truth = site(hash_of(str(head)))
        columns = [truth.names, *([cell.replace(".", ",") for cell in one] for one in cells(truth)[1:])]
        columns += [["GEL"] * N] if head and len(head) > 4 else []
        yield made(f"commas for all {head}", lines_of(columns, ",", head), truth, 1 + (head is not None))
    for between, sign in ((", ", ";"), (",", "\t"), (" ", ";"), (" / ", "|")):
        truth = site(hash_of(between + sign))
        place = [f"{lat:.9f}{between}{lon:.9f}" for lat, lon in zip(truth.latitude, truth.longitude)]
        text = lines_of([truth.names, place, columns_of(truth)["height"]], sign, ["pt", "position", "h"])
        yield Shape(f"position in one column {between!r}", text.encode(), degrees_of(truth, 2), geographic=True)
    for words in ("D M S", "Deg Min Sec", "_d _m _s", " (°) (') (\")"):
        truth = site(hash_of(words))
        parts = [*_parts(truth.latitude), *_parts(truth.longitude)]
        names = [
            f"{stem}{part}" if part[0] != "(" else f"{stem} {part}" for stem in ("lat", "lon") for part in words.split()
        ]
        text = lines_of([truth.names, *parts, columns_of(truth)["height"]], ",", ["pt", *names, "h"])
        yield Shape(f"parts of degrees {words}", text.encode(), degrees_of(truth, 2), geographic=True, precision=1e-8)
    for sign in (" ", ",", ";"):
        truth = site(hash_of("parts" + sign))
        parts = [*_parts(truth.latitude), *_parts(truth.longitude)]
        text = lines_of([truth.names, *parts, columns_of(truth)["height"]], sign)
        yield Shape(f"parts of degrees {sign!r}", text.encode(), degrees_of(truth, 1), geographic=True, precision=1e-8)


def _parts(degrees: np.ndarray) -> List[List[str]]:
    seconds = np.round(degrees * 3600.0, 5)
    return [
        [f"{int(one // 3600)}" for one in seconds], [f"{int(one % 3600 // 60)}" for one in seconds],
        [f"{one % 60:.5f}" for one in seconds],
    ]  # fmt: skip


def odd_numbers() -> Iterator[Shape]:
    """A minus behind, brackets below zero, feet and inches, marks and units that change within the file."""
    for written in ("{:.3f}-", "({:.3f})"):
        for sign in (",", ";", "\t"):
            truth = site(hash_of(written + sign), height=-3.0)
            below = [written.format(-one) if one < 0 else f"{one:.3f}" for one in truth.height]
            yield made(f"below zero {written} {sign!r}", lines_of(cells(truth, below), sign, HEAD), truth, 2)
    for written in ("{:d}' {:.2f}\"", "{:d}'-{:.2f}\"", "{:d} ft {:.2f} in", "{:d}'{:.2f}''"):
        truth = site(hash_of(written))
        feet = [written.format(int(one / FOOT), (one / FOOT - int(one / FOOT)) * 12) for one in truth.height]
        shape = made(f"feet and inches {written}", lines_of(cells(truth, feet), "\t", HEAD), truth, 2)
        if all(float(one.split()[-2] if one.endswith("in") else 0) < 11.995 for one in feet):
            yield _nearly(shape)
    for sign in (";", "\t"):
        truth = site(hash_of("half" + sign))
        half = [[cell if i < 30 else cell.replace(".", ",") for i, cell in enumerate(one)] for one in cells(truth)[1:]]
        yield made(f"mark changes {sign!r}", lines_of([truth.names, *half], sign, HEAD), truth, 2)
        mixed = [*cells(truth)[:3], [cell.replace(".", ",") for cell in cells(truth)[3]]]
        yield made(f"mark of heights alone {sign!r}", lines_of(mixed, sign, HEAD), truth, 2)
        both = [f"{one:.3f} m" if i < 30 else f"{one / FOOT:.4f} ft" for i, one in enumerate(truth.height)]
        yield made(f"unit changes {sign!r}", lines_of(cells(truth, both), sign, HEAD), truth, 2)
    for sign in ("\t", ";"):
        truth = site(hash_of("thousands" + sign))
        apart = [[f"{float(cell):,.3f}".replace(",", " ") for cell in one] for one in cells(truth)[1:]]
        yield made(f"blanks in thousands {sign!r}", lines_of([truth.names, *apart], sign, HEAD), truth, 2)


def _nearly(shape: Shape) -> Shape:
    """A shape of feet and inches: heights as exact as a hundredth of an inch."""
    rounded = {line: (e, n, round(h, 3)) for line, (e, n, h) in shape.truth.items()}
    return Shape(shape.label, shape.raw, rounded, meant={"--height-unit": "ft", "--units-from": "header"})


def scaled_degrees() -> Iterator[Shape]:
    for lat, lon, size, places in (
        ("lat_1e7", "lon_1e7", 1e7, 0), ("lat_e7", "lon_e7", 1e7, 0), ("lat_sec", "lon_sec", 3600.0, 5),
        ("Latitude (sec)", "Longitude (sec)", 3600.0, 5), ("", "", 1e7, 0),
    ):  # fmt: skip
        truth = site(hash_of(lat + str(size)))
        columns = [[f"{one * size:.{places}f}" for one in values] for values in (truth.latitude, truth.longitude)]
        head = ["t", lat, lon, "alt"] if lat else None
        text = lines_of([truth.names, *columns, columns_of(truth)["height"]], ",", head)
        yield Shape(f"degrees {lat or 'mute'} {size:g}", text.encode(), degrees_of(truth, 2 if lat else 1),
                    geographic=True, precision=1e-7)  # fmt: skip


def old_encodings() -> Iterator[Shape]:
    """Letters of before Unicode, by header words that only one encoding makes sense of."""
    for encoding, words, order in (
        ("koi8-r", "Ном. точки;X, м;Y, м;H, м", "NE"), ("koi8-r", "Точка;Север;Восток;Отметка", "NE"),
        ("shift_jis", "点名;北座標;東座標;標高", "NE"), ("cp949", "점번호;북좌표;동좌표;표고", "NE"),
        ("gb18030", "点号;北坐标;东坐标;高程", "NE"), ("cp1255", "נקודה;מזרח;צפון;גובה", "EN"),
        ("cp1256", "نقطة;شرق;شمال;ارتفاع", "EN"),
    ):  # fmt: skip
        truth = site(hash_of(encoding + words))
        name, east, north, height = cells(truth)
        plan = [north, east] if order == "NE" else [east, north]
        text = lines_of([name, *plan, height], ";", words.split(";"))
        yield made(f"encoding {encoding} {words}", text, truth, 2, encoding=encoding)
    truth = site(31)
    arabic = str.maketrans({**{str(i): chr(0x660 + i) for i in range(10)}, ".": "\u066b", ";": "\u061b"})
    text = lines_of(cells(truth), ";").translate(arabic)
    yield made("Arabic digits and semicolons", "النقطة\u061bشرق\u061bشمال\u061bارتفاع\n" + text, truth, 2)


def on_their_side() -> Iterator[Shape]:
    """A key and a value a line, a line for each column, points side by side, elements of XML."""
    words = ("Point", "Easting", "Northing", "Elevation")
    for equal in (": ", " = ", "="):
        truth = site(hash_of("keys" + equal))
        blocks = ["\n".join(f"{word}{equal}{cell}" for word, cell in zip(words, row)) for row in zip(*cells(truth))]
        yield made(f"a key a line {equal}", "\n\n".join(blocks) + "\n", truth, 2)
    for sign in (",", ";", "\t"):
        truth = site(hash_of("turned" + sign))
        text = "\n".join(sign.join([word, *one]) for word, one in zip(words, cells(truth))) + "\n"
        yield made(f"a line a column {sign!r}", text, truth, 2)
        half = N // 2
        beside = [*(one[:half] for one in cells(truth)), *(one[half:] for one in cells(truth))]
        yield made(f"side by side {sign!r}", lines_of(beside, sign, [*HEAD, *HEAD]), truth, 2)
    for form in (
        '<p id="{}"><east>{}</east><north>{}</north><elev>{}</elev></p>', '<point name="{}" x="{}" y="{}" z="{}"/>',
        "<pt><name>{}</name><pos><e>{}</e><n>{}</n><h>{}</h></pos></pt>",
    ):  # fmt: skip
        truth = site(hash_of(form))
        rows = "\n".join(form.format(*row) for row in zip(*cells(truth)))
        text = f'<?xml version="1.0"?>\n<survey><points>\n{rows}\n</points></survey>\n'
        meant = {"--columns": "name=1,easting=2,northing=3,height=4"}
        yield made(f"XML {form}", text, truth, 2, suffix=".xml", meant=meant)
    for sign in (";", ",", "\t"):
        truth = site(hash_of("wkt" + sign))
        place = [f"POINT Z ({e} {n} {h})" for _, e, n, h in zip(*cells(truth))]
        yield made(f"WKT behind {sign!r}", lines_of([truth.names, place], sign, ["name", "geom"]), truth, 2)


def every_asked() -> List[Shape]:
    kinds = (
        said_units, antennas, two_heights, several_sets, divided, odd_numbers, scaled_degrees, old_encodings,
        on_their_side,
    )  # fmt: skip
    return [shape for kind in kinds for shape in kind()]
