"""What is read of all points at once, against the same read of each by itself."""

import re

import numpy as np
import pytest

from plugin.core.gate import nearest
from plugin.core.gate.kinds import number_order
from plugin.core.gate.nearest import usual_distance
from plugin.core.gate.parts import occupied_cells, parts_of
from plugin.core.points.delimited import read_points
from plugin.core.points.digits import Digits
from plugin.core.points.features import _thousands
from plugin.core.points.no_value import _may_be_usual, is_usual


@pytest.mark.parametrize("seed", range(30))
def test_digits_are_those_of_int(seed):
    rng = np.random.default_rng(seed)
    fields = ["".join(rng.choice(list("0123456789.-x"), rng.integers(1, 17), p=[0.098] * 10 + [0.01, 0.005, 0.005]))
              for _ in range(50)]  # fmt: skip
    text = np.frombuffer(",".join(fields).encode(), np.uint8)
    end = np.cumsum([len(field) + 1 for field in fields]) - 1
    numbers, good = Digits(text).read(end, np.array([len(field) for field in fields]))
    assert good.tolist() == [field.isdigit() for field in fields]
    assert numbers[good].tolist() == [int(field) for field in fields if field.isdigit()]


def by_regex(names):
    """The order of the last numbers of names of one form, one name after another; None where it is that of the file."""
    forms = {re.sub(r"\d+", "#", name) for name in names}
    numbers = [re.findall(r"\d+", name) for name in names]
    if len(forms) > 1 or not all(numbers) or len({int(each[-1]) for each in numbers}) < len(names):
        return None
    order = sorted(range(len(names)), key=lambda i: int(numbers[i][-1]))
    return None if order == list(range(len(names))) else order


@pytest.mark.parametrize("seed", range(200))
def test_the_order_of_numbers_in_names(seed):
    rng = np.random.default_rng(seed)
    form = rng.choice(["P{}", "{}", "A{}b{}", "é{}", "P{:04d}", "{}a", "x", "{}-{}", "#{}", "2025040911{:09d}"])
    names = [form.format(rng.integers(0, 200), rng.integers(0, 5000)) for _ in range(rng.integers(1, 40))]
    if rng.random() < 0.3:
        names[rng.integers(len(names))] = str(rng.choice(["", "Q1", "P", "12x", "P7"]))
    found = number_order(np.array(names, object))
    assert (None if found is None else found.tolist()) == by_regex(names)


def test_names_of_many_blocks():
    numbers = np.random.default_rng(1).permutation(150_000)
    found = number_order(np.array([f"P{i}" for i in numbers], object))
    assert np.array_equal(numbers[found], np.arange(150_000))


@pytest.mark.parametrize("seed", range(100))
def test_cells_by_a_table_or_by_sorting_are_the_same(seed):
    rng = np.random.default_rng(seed)
    xy = rng.normal(0, 10 ** rng.uniform(-1, 7), (rng.integers(1, 200), 2))
    cell = 10 ** rng.uniform(-1, 3)
    whole = np.floor(xy / cell)
    assert occupied_cells(xy, cell) == len(np.unique(np.clip(whole, -(1 << 29), 1 << 29), axis=0))
    part, size = parts_of(xy, cell)
    near = np.abs(whole[:, None] - whole[None]).max(axis=2) <= 1
    assert (part[:, None] == part[None])[near].all()
    assert np.array_equal(size, np.bincount(part))


@pytest.mark.parametrize("seed", range(60))
def test_usual_distances_of_a_part_are_those_of_all(seed, monkeypatch):
    rng = np.random.default_rng(seed)
    xy = rng.normal(0, 10 ** rng.uniform(0, 4), (int(10 ** rng.uniform(0.3, 3.5)), 2)).round(rng.integers(0, 4))
    if seed % 3 == 0:
        xy[: len(xy) // 3] *= 1e3
    if seed % 3 == 1:
        xy = np.repeat(xy, rng.integers(1, 6), axis=0)
    whole = usual_distance(xy)
    monkeypatch.setattr(nearest, "_MANY", 50)
    assert usual_distance(xy) == whole


def test_values_for_none_are_among_those_looked_at():
    rng = np.random.default_rng(1)
    values = np.concatenate(
        [rng.uniform(-1, 1, 20_000) * 10 ** rng.uniform(-3, 14, 20_000), rng.integers(-10_000, 10_000, 20_000),
         [0.0, -0.0, 99, -99, 999, 9999.99, 99.9, 8888, 8888.8, 32767, -32768, 2147483647, 3.4e38, 99.99999999999]]
    )  # fmt: skip
    looked_at = _may_be_usual(values)
    assert looked_at.mean() < 0.3
    assert not any(is_usual(value) for value in values[~looked_at].tolist())


@pytest.mark.parametrize("sign", [",", ", ", " "])
def test_three_columns_of_numbers_are_no_column_of_three(tmp_path, sign):
    path = tmp_path / "bare.csv"
    rows = [f"{550000 + i / 2:.3f}{sign}{5713000 + i / 4:.3f}{sign}{90 + i / 100:.3f}" for i in range(80)]
    path.write_text(sign.join(["easting", "northing", "height"]) + "\n" + "\n".join(rows) + "\n")
    read = read_points(path)
    assert read.format.delimiter == sign[0]
    assert read.points.height.tolist() == [90 + i / 100 for i in range(80)]
    assert not any("commas" in str(one) for one in read.messages)


@pytest.mark.parametrize(
    ("field", "thousands"), [("1 120.4007", False), ("-1 204", True), ("1,234", True), ("'1", False)]
)
def test_a_number_in_groups_that_blanks_part_may_be_one_of_thousands(field, thousands):
    """Found by damaged files: groups parted by blanks, with decimals, ended in a fault of the program."""
    assert _thousands(field) == thousands
