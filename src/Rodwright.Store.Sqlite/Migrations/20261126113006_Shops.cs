using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Rodwright.Store.Sqlite.Migrations;

internal sealed partial class Shops : Migration
{
    protected override void Up(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.CreateTable(
            name: "shop_versions",
            columns: table => new
            {
                version = table.Column<int>(type: "INTEGER", nullable: false),
                changed_by = table.Column<string>(type: "TEXT", nullable: false),
                changed_utc = table.Column<DateTime>(type: "TEXT", nullable: false),
                ticket = table.Column<Guid>(type: "TEXT", nullable: false),
                text = table.Column<string>(type: "TEXT", nullable: false)
            },
            constraints: table =>
            {
                table.PrimaryKey("shop_versions_key", x => x.version);
            });
    }

    protected override void Down(MigrationBuilder migrationBuilder)
    {
        migrationBuilder.DropTable(
            name: "shop_versions");
    }
}
