namespace Rodwright.Browser.Tests;

/// <summary>The tests share one server, and run one after the other: two cores hold a server and one busy browser.</summary>
[CollectionDefinition("workshop", DisableParallelization = true)]
public sealed class Rooms : ICollectionFixture<Workshop>;
