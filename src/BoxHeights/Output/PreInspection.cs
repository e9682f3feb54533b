using System;
using System.Collections.Generic;
using System.Text;
using BoxHeights.Rules;

namespace BoxHeights;

/// <summary>What to look at before the inspector comes: for every new box the things that rough inspections turn up most, each with its source.</summary>
/// <remarks>
/// A list to tick off by eye and tape; the library sees none of it. What is looked at are the rows of the set (<see cref="InspectionItem"/>): those of the National Electrical
/// Code, 2017 to 2023, cover wiring in nonmetallic-sheathed cable. It isn't complete: a list without an open tick isn't an approval. What isn't described is taken as the catalog's usual box without
/// clamps in gypsum board.
/// </remarks>
public sealed partial class PreInspection
{
    private readonly Dwelling dwelling;

    private readonly List<InspectionItem> items;

    private PreInspection(Dwelling dwelling, List<InspectionItem> items, List<InspectionRow> rows, List<LeftOutBox> notListed)
    {
        this.dwelling = dwelling;
        this.items = items;
        Rows = new(rows);
        NotListed = new(notListed);
    }

    /// <summary>What to look at: room by room, box by box, in the order in which a box is looked over.</summary>
    public Items<InspectionRow> Rows { get; }

    /// <summary>Boxes that nothing is listed for, and why.</summary>
    public Items<LeftOutBox> NotListed { get; }

    /// <summary>The list of an evaluated dwelling.</summary>
    /// <param name="evaluation">The evaluation, whose catalog and units the list takes.</param>
    /// <exception cref="ArgumentNullException"><paramref name="evaluation"/> is null.</exception>
    public static PreInspection For(Evaluation evaluation)
    {
        PartsCatalog catalog = (evaluation ?? throw new ArgumentNullException(nameof(evaluation))).State.Options.Catalog;
        Dwelling dwelling = evaluation.Dwelling;
        List<InspectionItem> items = [];
        foreach (Rule rule in evaluation.Rules.Rows)
        {
            if (rule is InspectionItem item)
            {
                items.Add(item);
            }
        }

        items.Sort((a, b) => a.Order != b.Order ? a.Order.CompareTo(b.Order) : string.CompareOrdinal(a.Id, b.Id));
        List<InspectionRow> rows = [];
        List<LeftOutBox> notListed = [];
        foreach (ResolvedBox box in evaluation.State.Boxes)
        {
            if (WhyNot(box, catalog) is { } why)
            {
                notListed.Add(new(box.Source.Id, why));
                continue;
            }

            try
            {
                InspectedBox inspected = new(box, catalog);
                foreach (InspectionItem item in items.FindAll(inspected.Asks))
                {
                    rows.Add(new(box.Surface.Address, box.Source, item, dwelling.Units));
                }
            }
            catch (OverflowException)
            {
                notListed.Add(new(box.Source.Id, "a measure around it is larger than anything in a house"));
            }
        }

        return new(dwelling, items, rows, notListed);
    }

    /// <summary>The list as Markdown: what to look for, by letters, then a grid for each room with a line for each box and a box to tick where a letter applies.</summary>
    public string ToMarkdown()
    {
        StringBuilder text = new();
        TextTable.AppendTitle(text, "Before the inspection: " + dwelling.Name, "Tick off what you have looked at yourself; the list isn't complete.");
        if (Rows.Count > 0)
        {
            text.Append("\n## What to look for\n\n");
        }

        foreach (string line in Key())
        {
            text.Append("- ").Append(TextTable.OneLine(line)).Append('\n');
        }

        Table().AppendMarkdown(text);
        TextTable.AppendList(text, "Nothing listed", NotListed);
        return text.ToString();
    }

    /// <summary>What each letter of the grid stands for.</summary>
    internal List<string> Key()
    {
        List<string> lines = [];
        for (int item = 0; item < items.Count; item++)
        {
            foreach (InspectionRow row in Rows)
            {
                if (row.ItemId == items[item].Id)
                {
                    lines.Add(Letter(item) + ": " + row.Text + " — " + row.Citation);
                    break;
                }
            }
        }

        return lines;
    }

    /// <summary>The grid: boxes down, what to look for across.</summary>
    internal TextTable Table()
    {
        List<string> columns = ["box", "on", "for"];
        for (int item = 0; item < items.Count; item++)
        {
            columns.Add(Letter(item));
        }

        TextTable table = new("room", columns.ToArray());
        for (int from = 0, to = 0; from < Rows.Count; from = to)
        {
            string[] cells = new string[columns.Count];
            for (int i = 0; i < cells.Length; i++)
            {
                cells[i] = "";
            }

            InspectionRow first = Rows[from];
            SurfaceAddress on = SurfaceAddress.Read(first.Address);
            (cells[0], cells[1], cells[2]) = (first.BoxId, on.Surface!, first.Purpose.Name);
            for (; to < Rows.Count && Rows[to].BoxId == first.BoxId && Rows[to].Address == first.Address; to++)
            {
                string item = Rows[to].ItemId;
                cells[3 + items.FindIndex(one => one.Id == item)] = "☐";
            }

            table.Add(on.Space, cells);
        }

        return table;
    }

    /// <summary>The same as <see cref="ToMarkdown"/>.</summary>
    public override string ToString() => ToMarkdown();

    /// <summary>The list as comma-separated values after RFC 4180, with a header line.</summary>
    public string ToCsv()
    {
        TextTable table = new("surface", "box", "for", "item", "look for", "source");
        foreach (InspectionRow row in Rows)
        {
            table.Add(row.Address, row.BoxId, row.Purpose.Name, row.ItemId, row.Text, row.Citation.ToString());
        }

        return table.ToCsv();
    }

    /// <summary>What stands for an item in the grid: A to Z, then AA and so on.</summary>
    private static string Letter(int item) => (item < 26 ? "" : Letter((item / 26) - 1)) + (char)('A' + (item % 26));

    private static string? WhyNot(ResolvedBox box, PartsCatalog catalog) =>
        box.IsExisting ? "it was there before this work"
        : catalog.BuildOf(ResolvedBox.KindOf(box.Source, catalog)).IsLowVoltage ? "a bracket for low voltage only"
        : null;
}
