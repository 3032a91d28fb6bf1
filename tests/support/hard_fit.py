# A buyer whose wishes no search can settle in a test's time.
import json
import os
import random


def write_hard_case(source, folder):
    """Wishes worth just what they cost: no order among them, so that a proof takes ages."""
    data = os.path.join(source, "tests/golden/data")
    with open(os.path.join(data, "book.json")) as file:
        book = json.load(file)
    with open(os.path.join(data, "buyer.json")) as file:
        buyer = json.load(file)
    draw = random.Random(60)
    buyer["wishes"] = []
    for i in range(60):
        cents = draw.randrange(40_000, 250_000)
        price = f"{cents // 100}.{cents % 100:02}"
        book["options"].append({"id": f"extra-{i}", "name": f"Extra {i}", "area": "inside",
                                "price": price})
        buyer["wishes"].append({"option": f"extra-{i}", "rank": i + 1, "weight": price})
    buyer["scenarios"] = buyer["scenarios"][:1]
    for name, value in ("book.json", book), ("buyer.json", buyer):
        with open(os.path.join(folder, name), "w") as file:
            json.dump(value, file)
    return os.path.join(folder, "buyer.json")
