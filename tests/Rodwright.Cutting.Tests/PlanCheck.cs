using Rodwright.Cutting;

namespace Rodwright.Cutting.Tests;

/// <summary>Goes over a plan with nothing of the solver's: every piece once, every board's room kept, stock and cost counted.</summary>
internal static class PlanCheck
{
    public static List<string> Faults(CuttingProblem problem, CuttingPlan plan)
    {
        var faults = new List<string>();
        var wanted = problem.Pieces.GroupBy(p => (p.Id, p.Length, p.Width)).ToDictionary(g => g.Key, g => g.Sum(p => p.Quantity));
        foreach (var piece in plan.Boards.SelectMany(b => b.Strips).SelectMany(s => s.Pieces).Concat(plan.Uncut))
        {
            var key = (piece.Id, piece.Length, piece.Width);
            if (piece.Quantity != 1) faults.Add($"{piece} is not one piece");
            if (!wanted.TryGetValue(key, out var left) || left == 0) faults.Add($"{piece} was not wanted so often");
            else wanted[key] = left - 1;
        }
        if (wanted.Values.Any(left => left > 0)) faults.Add("a piece is missing");
        foreach (var board in plan.Boards) faults.AddRange(Faults(problem, board));
        foreach (var stock in problem.Stock.Where(s => s.Quantity is not null))
            if (plan.Boards.Count(b => b.Stock == stock) > problem.Stock.Where(s => s == stock).Sum(s => s.Quantity!.Value)) faults.Add($"more of {stock} than there are");
        if (plan.Boards.Any(b => !problem.Stock.Contains(b.Stock))) faults.Add("a board that is no stock");
        if (plan.Boards.Sum(b => b.Stock.Cost) != plan.Cost) faults.Add("the cost is not the boards'");
        if (plan.Bound > plan.Cost) faults.Add("the bound is above the cost");
        if (plan.IsProven && plan.Bound != plan.Cost) faults.Add("proven, but the bound is another");
        return faults;
    }

    private static IEnumerable<string> Faults(CuttingProblem problem, CutBoard board)
    {
        var saw = problem.Saw;
        if (board.Strips.All(s => s.Pieces.IsEmpty)) yield return "a board nothing is cut from";
        var across = board.Strips.Sum(s => s.Width) + (board.Strips.Length - 1) * saw.Kerf + (board.Strips.Length > 1 ? 2 * saw.EdgeTrim : 0);
        if (across > board.Stock.Width) yield return $"strips {across} across a board of {board.Stock.Width}";
        foreach (var strip in board.Strips)
        {
            var used = strip.Pieces.Sum(p => p.Length) + Math.Max(0, strip.Pieces.Length - 1) * saw.Kerf + 2 * saw.EndTrim;
            if (used > board.Stock.Length) yield return $"{used} along a board of {board.Stock.Length}";
            if (strip.Pieces.Any(p => p.Width > strip.Width)) yield return "a piece wider than its strip";
            var left = board.Stock.Length - 2 * saw.EndTrim - strip.Pieces.Sum(p => p.Length + saw.Kerf);
            if (strip.Left != Math.Max(0, left)) yield return $"left {strip.Left}, reckoned {left}";
        }
    }
}
